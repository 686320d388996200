package org.fandown.air;

/** The air of a state before a step, so that the step can be judged and taken back. */
final class AirBackup {
    final double[] mass;
    private final double[] temperature;
    private final double[] pressure;
    private final double[] slope;
    private final double[] flow;
    private final double[] exhaust;
    private double time;

    AirBackup(AirNetwork network) {
        int nodes = network.nodes.count;
        int links = network.links().size();
        mass = new double[nodes];
        temperature = new double[nodes];
        pressure = new double[nodes];
        slope = new double[nodes];
        flow = new double[links];
        exhaust = new double[links];
    }

    void save(AirState state) {
        copy(state.mass, mass);
        copy(state.temperature, temperature);
        copy(state.pressure, pressure);
        copy(state.slope, slope);
        copy(state.flow, flow);
        copy(state.exhaust, exhaust);
        time = state.time;
    }

    void restore(AirState state) {
        copy(mass, state.mass);
        copy(temperature, state.temperature);
        copy(pressure, state.pressure);
        copy(slope, state.slope);
        copy(flow, state.flow);
        copy(exhaust, state.exhaust);
        state.time = time;
    }

    /**
     * Works out how fast the pressures changed since they were saved.
     *
     * @param state the state, whose slopes are set
     * @param seconds the time that passed
     * @return the largest change, Pa
     */
    double compare(AirState state, double seconds) {
        double perSecond = 1 / seconds;
        double largest = 0;
        for (int i = 0; i < pressure.length; i++) {
            double change = state.pressure[i] - pressure[i];
            state.slope[i] = change * perSecond;
            largest = Math.max(largest, Math.abs(change));
        }
        return largest;
    }

    private static void copy(double[] from, double[] to) {
        System.arraycopy(from, 0, to, 0, from.length);
    }
}
