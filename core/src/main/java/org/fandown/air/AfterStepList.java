package org.fandown.air;

import java.util.List;

/** All elements of an air system in a fixed order, as what happens after each step. */
final class AfterStepList implements AfterStep {
    private final Element[] elements;
    private final AirSource compressor;
    private final AirMemory pumped;
    private AirControls controls = AirControls.NONE;

    AfterStepList(List<Element> elements, AirSource compressor, AirMemory pumped) {
        this.elements = elements.toArray(Element[]::new);
        this.compressor = compressor;
        this.pumped = pumped;
    }

    void control(AirControls next) {
        controls = next;
    }

    AirControls controls() {
        return controls;
    }

    @Override
    public void after(AirState state, double seconds) {
        state.foresight.clear();
        double air = state.recall(pumped) + state.inflow(compressor) * seconds;
        state.remember(pumped, air);
        for (Element element : elements) {
            element.update(state, controls, seconds);
        }
    }
}
