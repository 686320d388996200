package org.fandown.rulebook;

import org.fandown.check.Check;
import org.fandown.check.CheckKind;
import org.fandown.check.Severity;
import org.fandown.document.Fields;

/** Reads what it means when a rule is not met. */
final class WeightReader {
    private WeightReader() {}

    static Rule.Weight read(Fields fields, Check check, Provenance provenance) {
        Standing standing = standing(fields, check);
        if (standing == Standing.REQUIRED
                && provenance == Provenance.FROM_MEMORY
                && !fields.has("bound-because")) {
            throw fields.refuse(
                    "provenance",
                    "is from-memory, and such a limit may not bind by itself",
                    "standing: unconfirmed or advisory, or bound-because: a reason",
                    "Compare the limit with its text, or weaken its standing.");
        }
        EvidenceDemand evidence =
                fields.optionalChoice("evidence", EvidenceDemand.values())
                        .orElse(
                                standing == Standing.REQUIRED
                                        ? EvidenceDemand.ASKED
                                        : EvidenceDemand.IF_OBSERVED);
        Severity severity =
                fields.optionalChoice("severity", Severity.values()).orElse(Severity.MAJOR);
        boolean outOfService = fields.optionalTruth("out-of-service").orElse(false);
        boolean approximate = fields.optionalTruth("approximate").orElse(false);
        return new Rule.Weight(standing, evidence, severity, outOfService, approximate);
    }

    private static Standing standing(Fields fields, Check check) {
        boolean duty = check.kind() == CheckKind.DUTY;
        Standing standing =
                fields.optionalChoice("standing", Standing.values())
                        .orElse(duty ? Standing.DUTY : Standing.REQUIRED);
        if (duty && standing != Standing.DUTY && standing != Standing.HISTORIC) {
            throw fields.refuse(
                    "standing", "does not fit a duty", "duty, historic", "Leave standing out.");
        }
        if (!duty && standing == Standing.DUTY) {
            throw fields.refuse(
                    "standing",
                    "does not fit " + check.id() + ", which is checked on the vehicle",
                    "required, unconfirmed, advisory, new-vehicle, historic",
                    "Leave standing out, or write one of these.");
        }
        return standing;
    }
}
