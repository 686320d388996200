package org.fandown.evidence;

import java.util.ArrayList;
import java.util.List;
import org.fandown.check.Check;
import org.fandown.check.Component;
import org.fandown.check.Verdict;
import org.fandown.vehicle.WheelId;

/** What a person says while inspecting: which check begins, what was observed, what follows. */
public sealed interface Statement {

    /**
     * Now this check is made. What is recorded of it later was observed from here on.
     *
     * @param check the check
     */
    record Begin(Check check) implements Statement {
        @Override
        public String toString() {
            return "begin: " + check.id();
        }
    }

    /**
     * This was observed.
     *
     * @param observations readings, wheels and parts
     */
    // Always said as Statement.Record; the word is the trade's.
    @SuppressWarnings("JavaLangClash")
    record Record(Observations observations) implements Statement {
        /**
         * Checks that a person can have read it.
         *
         * @throws IllegalArgumentException if it holds an estimate, which only a trace gives
         */
        public Record {
            for (Reading reading : observations.readings().values()) {
                if (reading instanceof Reading.Estimate) {
                    throw new IllegalArgumentException(
                            "A person records what was read, not an estimate of "
                                    + reading.check().id()
                                    + ".");
                }
            }
        }

        @Override
        public String toString() {
            List<String> what = new ArrayList<>();
            observations.readings().keySet().forEach(check -> what.add(check.id()));
            for (WheelId wheel : observations.wheels().keySet()) {
                what.add("wheel " + wheel);
            }
            for (Component part : observations.parts().keySet()) {
                what.add(part.id());
            }
            if (observations.allOtherPartsSeen()) {
                what.add("all other parts");
            }
            return "record: " + (what.isEmpty() ? "nothing" : String.join(", ", what));
        }
    }

    /**
     * This follows.
     *
     * @param verdict whether the vehicle may move
     * @param defects what is wrong with it
     */
    record Conclude(Verdict verdict, List<ClaimedDefect> defects) implements Statement {
        /** Copies the list. */
        public Conclude {
            defects = List.copyOf(defects);
        }

        @Override
        public String toString() {
            List<String> named = new ArrayList<>();
            defects.forEach(defect -> named.add(defect.toString()));
            return "conclude: "
                    + verdict.title()
                    + (named.isEmpty() ? "; no defect" : "; " + String.join(", ", named));
        }
    }
}
