package org.fandown.referee;

import java.util.Optional;

/**
 * Where in a run a check was really made.
 *
 * @param from from when on what it had to begin with counts
 * @param made the stretch in which it was made; one tick where it was made in a moment
 * @param moment how all stood in that moment, where it was something that was done
 */
record Proof(long from, Stretch made, Optional<Scene> moment) {
    static Proof of(long from, Stretch made) {
        return new Proof(from, made, Optional.empty());
    }

    static Proof at(long from, Tale.Deed deed) {
        return new Proof(from, new Stretch(deed.tick(), deed.tick()), Optional.of(deed.scene()));
    }

    static Proof at(long from, long tick) {
        return of(from, new Stretch(tick, tick));
    }
}
