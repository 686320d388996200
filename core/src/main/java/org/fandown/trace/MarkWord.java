package org.fandown.trace;

import java.util.Optional;
import org.fandown.document.Names;

/** What a person can mark where no signal tells it. */
public enum MarkWord {
    /** The low-air warning came on. */
    LOW_AIR_WARNING,
    /** The knob of the parking brake came out by itself. */
    PARKING_KNOB_OUT,
    /** The knob of the trailer supply came out by itself. */
    TRAILER_KNOB_OUT,
    /** The foot went onto the brake pedal. */
    FOOT_ON,
    /** The foot left the brake pedal. */
    FOOT_OFF,
    /** The air-loss test with the brakes applied begins. */
    BEGIN_AIR_LOSS_APPLIED,
    /** The air-loss test with the brakes released begins. */
    BEGIN_AIR_LOSS_RELEASED,
    /** An air-loss test ends. */
    END_AIR_LOSS;

    /** Returns the word as a person writes it. */
    public String id() {
        return Names.kebab(this);
    }

    /** Returns the word that a text is, capitals, spaces and underscores aside; empty if none. */
    public static Optional<MarkWord> find(String text) {
        StringBuilder id = new StringBuilder();
        for (char c : text.strip().toCharArray()) {
            boolean capital = c >= 'A' && c <= 'Z';
            id.append(capital ? (char) (c + 32) : c == ' ' || c == '_' ? '-' : c);
        }
        return Optional.ofNullable(Names.byKebab(values()).get(id.toString()));
    }

    /** Returns all words, for refusals. */
    public static String allowed() {
        return String.join(", ", Names.byKebab(values()).keySet());
    }
}
