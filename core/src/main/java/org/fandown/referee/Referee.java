package org.fandown.referee;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fandown.check.Check;
import org.fandown.judgement.Finding;
import org.fandown.judgement.Judgement;
import org.fandown.judgement.Status;
import org.fandown.practice.PracticeTruck;
import org.fandown.practice.Run;
import org.fandown.procedure.CheckStep;
import org.fandown.procedure.Durations;
import org.fandown.procedure.Plan;
import org.fandown.procedure.PlanRequest;
import org.fandown.procedure.Planner;
import org.fandown.procedure.Scope;
import org.fandown.procedure.StepSet;
import org.fandown.procedure.Steps;
import org.fandown.procedure.VehicleDurations;
import org.fandown.rulebook.EvidenceDemand;
import org.fandown.rulebook.RulesInForce;
import org.fandown.units.Num;
import org.fandown.units.Unit;

/**
 * Marks runs on the practice truck by the rules of a place.
 *
 * <p>The run is replayed, and what really happened is held against what was said. The same run,
 * rules and sheet give the same marks on every machine.
 */
public final class Referee {
    /** The clock may be this much short of the rest that air needs, s. */
    private static final double CLOCK = 5;

    private final Run run;
    private final Sheet sheet;
    private final StepSet set;
    private final StepSet thorough;
    private final Durations durations;
    private final List<Feedback> feedback = new ArrayList<>();
    private final Set<Check> doubtful = EnumSet.noneOf(Check.class);

    private Referee(Run run, RulesInForce rules, Sheet sheet) {
        this.run = run;
        this.sheet = sheet;
        durations = VehicleDurations.of(rules.vehicle());
        set = Steps.of(rules, durations, Scope.ASKED);
        thorough = Steps.of(rules, durations, Scope.THOROUGH);
    }

    /**
     * Marks a run.
     *
     * @param run the run
     * @param rules the rules in force for its vehicle
     * @param sheet what counts
     * @throws IllegalArgumentException if the rules are for another vehicle
     */
    public static Marks mark(Run run, RulesInForce rules, Sheet sheet) {
        if (!rules.vehicle().equals(run.scenario().vehicle())) {
            throw new IllegalArgumentException(
                    "The rules are those for '"
                            + rules.vehicle().name()
                            + "', the run is on '"
                            + run.scenario().vehicle().name()
                            + "'. Take the rules for this vehicle.");
        }
        return new Referee(run, rules, sheet).mark();
    }

    private Marks mark() {
        Witness witness = new Witness(durations.settling() / 10.0 - CLOCK);
        PracticeTruck truck = run.replay(witness);
        Tale tale = witness.tale();
        feedback.addAll(Safety.of(tale, truck.events()));
        Attempts attempts = Attempts.of(run, set);
        Judgement judged = Verdicts.of(attempts.all(), set, attempts);
        missing(judged);
        checks(tale, attempts);
        spoiledByTheRecord(judged, attempts);
        feedback.addAll(new Conclusions(run, attempts, judged, doubtful).mistakes());
        double plan = planSeconds();
        feedback.addAll(new Course(run, set, attempts, sheet).mistakes(plan));
        boolean replayed = truck.fingerprint() == run.fingerprint();
        return Marks.of(run, set.rules().place(), sheet, onceEach(feedback), replayed, plan);
    }

    /** Checks that the place asks for and of which nothing was written down. */
    private void missing(Judgement judged) {
        for (CheckStep step : set.checks()) {
            boolean open = false;
            for (Finding finding : judged.findings()) {
                open |=
                        finding.status() == Status.NOT_CHECKED
                                && finding.decides()
                                && finding.ruling().rule().weight().evidence()
                                        == EvidenceDemand.ASKED
                                && step.checks().contains(finding.ruling().rule().check());
            }
            if (open) {
                doubtful.addAll(step.checks());
                String caution = step.caution().isEmpty() ? "" : " " + step.caution();
                feedback.add(
                        new Feedback(
                                Item.MADE,
                                run.seconds(),
                                "Not made, or not written down: "
                                        + Words.inside(step.check().title())
                                        + ".",
                                asked(step),
                                step.action() + "." + caution));
            }
        }
    }

    private static String asked(CheckStep step) {
        return step.rulings().isEmpty()
                ? "Good practice asks for it."
                : "The rule " + step.rulings().get(0).rule().id() + " asks for it.";
    }

    private void checks(Tale tale, Attempts attempts) {
        Spoilers spoilers = new Spoilers(tale, sheet);
        Figures figures = new Figures(tale, sheet);
        Seen seen = new Seen(tale, sheet);
        Proofs proofs = new Proofs(tale);
        for (Check check : attempts.inTurn()) {
            Attempt attempt = attempts.of(check).orElseThrow();
            List<CheckStep> steps = steps(check);
            List<Feedback> own = new ArrayList<>(fewest(spoilers, steps, attempt));
            List<Proof> made =
                    steps.isEmpty() ? proofs.ofSign(attempt) : proofs.of(steps.get(0), attempt);
            boolean clockTold = own.stream().anyMatch(f -> f.item() == Item.LONG_ENOUGH);
            if (!clockTold) {
                figures.of(attempt, made).ifPresent(own::add);
            }
            own.addAll(seen.wheels(attempt));
            if (check == Check.WALK_ROUND && !steps.isEmpty()) {
                own.addAll(seen.parts(steps.get(0), attempt));
            }
            if (!own.isEmpty()) {
                doubtful.add(check);
            }
            feedback.addAll(own);
        }
    }

    /**
     * The steps that a check gives its name to, also where the place does not ask for it: two where
     * its rules cannot be met in one go.
     */
    private List<CheckStep> steps(Check check) {
        List<CheckStep> asked = named(set, check);
        return asked.isEmpty() ? named(thorough, check) : asked;
    }

    private static List<CheckStep> named(StepSet from, Check check) {
        List<CheckStep> found = new ArrayList<>();
        for (CheckStep step : from.checks()) {
            if (step.check() == check) {
                found.add(step);
            }
        }
        return found;
    }

    private static List<Feedback> fewest(
            Spoilers spoilers, List<CheckStep> steps, Attempt attempt) {
        List<Feedback> best = List.of();
        for (int i = 0; i < steps.size(); i++) {
            List<Feedback> found = spoilers.of(steps.get(i), attempt);
            best = i == 0 || found.size() < best.size() ? found : best;
        }
        return gravest(best);
    }

    /** A check that several things spoiled is spoiled once; what endangers stays beside. */
    private static List<Feedback> gravest(List<Feedback> found) {
        List<Feedback> kept = new ArrayList<>();
        boolean spoiled = false;
        for (Feedback each : found) {
            if (each.item() != Item.UNSPOILED || !spoiled) {
                kept.add(each);
            }
            spoiled |= each.item() == Item.UNSPOILED;
        }
        return kept;
    }

    /** What the judge calls spoiled by what was noted, where the truck did not show it already. */
    private void spoiledByTheRecord(Judgement judged, Attempts attempts) {
        Set<Check> told = EnumSet.noneOf(Check.class);
        for (Finding finding : judged.findings()) {
            Check check = finding.ruling().rule().check();
            Optional<Attempt> attempt = attempts.of(check);
            boolean open =
                    finding.status() == Status.SPOILED
                            && finding.decides()
                            && !doubtful.contains(check)
                            && !told.contains(check);
            if (open && attempt.isPresent()) {
                told.add(check);
                feedback.add(
                        new Feedback(
                                Item.UNSPOILED,
                                attempt.get().seconds(),
                                check.title() + ": " + finding.why().reason(),
                                "So it proves nothing in " + set.rules().place() + ".",
                                finding.why().advice().isEmpty()
                                        ? "Make it as the rule asks."
                                        : Words.sentence(finding.why().advice())));
            }
        }
        doubtful.addAll(told);
    }

    /** A mistake of safety that spoils many checks is one mistake. */
    private static List<Feedback> onceEach(List<Feedback> all) {
        List<Feedback> kept = new ArrayList<>();
        for (Feedback each : all) {
            boolean needs = each.item() == Item.CHOCKED;
            boolean told = kept.stream().anyMatch(k -> needs && k.item() == each.item());
            if (!told) {
                kept.add(each);
            }
        }
        return kept;
    }

    private double planSeconds() {
        if (sheet.entry(Item.TIME).isEmpty()) {
            return 0;
        }
        int psi = (int) Num.round(run.scenario().start().pressure().inPsi());
        PlanRequest request = new PlanRequest(psi, PlanRequest.Goal.QUICKEST, List.of());
        Optional<Plan> plan = new Planner(set, durations).plan(request);
        return plan.map(p -> p.tenths() / 10.0).orElse(0.0);
    }

    static double share(Sheet sheet, Item item) {
        return sheet.allowed(item, Unit.PERCENT) / 100;
    }
}
