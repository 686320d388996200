package org.fandown.judgement;

import java.util.List;
import org.fandown.check.Verdict;
import org.fandown.evidence.Inspection;
import org.fandown.rulebook.RulesInForce;

/**
 * The whole of what the judge says about one inspection.
 *
 * @param inspection what was judged
 * @param rules the rules it was judged by
 * @param findings one for each rule applied (and wheel)
 * @param defects what is wrong
 * @param verdict the verdict
 * @param because the findings or defects that decided it, in words, worst first
 */
public record Judgement(
        Inspection inspection,
        RulesInForce rules,
        List<Finding> findings,
        List<Defect> defects,
        Verdict verdict,
        List<String> because) {
    /** Copies the lists. */
    public Judgement {
        findings = List.copyOf(findings);
        defects = List.copyOf(defects);
        because = List.copyOf(because);
    }
}
