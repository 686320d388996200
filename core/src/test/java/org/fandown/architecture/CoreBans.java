package org.fandown.architecture;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The parts of the Java library that the core stays away from.
 *
 * <p>The same core runs on the Java machine and, compiled, in the browser, and must give the same
 * bits in both. Some parts of the library are missing there, others differ silently, and others
 * depend on the time, the place or the chance of a single run.
 */
final class CoreBans {
    /** The packages of the library that exist and agree in both worlds. */
    private static final Set<String> LIBRARY =
            Set.of(
                    "java.lang",
                    "java.lang.annotation",
                    "java.math",
                    "java.time",
                    "java.time.chrono",
                    "java.time.format",
                    "java.time.temporal",
                    "java.util",
                    "java.util.function",
                    "java.util.regex",
                    "java.util.stream",
                    "org.jspecify.annotations");

    /** Classes of those packages that are banned all the same, each line with its reason. */
    private static final List<String> BANNED_CLASSES =
            List.of(
                    "order differs: java.util.HashMap java.util.HashSet java.util.Hashtable"
                            + " java.util.IdentityHashMap java.util.WeakHashMap",
                    "own generator instead: java.util.Random java.util.SplittableRandom"
                            + " java.util.UUID",
                    "own number class instead: java.lang.StrictMath java.lang.Float",
                    "missing in the browser: java.util.StringJoiner java.util.Scanner"
                            + " java.util.HexFormat java.util.ServiceLoader",
                    "depends on the place: java.util.Locale java.util.Formatter"
                            + " java.util.ResourceBundle java.util.Currency java.util.TimeZone",
                    "depends on the time: java.time.Clock java.util.Date java.util.Calendar"
                            + " java.util.GregorianCalendar java.util.Timer java.util.TimerTask",
                    "depends on the machine: java.lang.Runtime java.lang.Process"
                            + " java.lang.ProcessBuilder java.lang.ClassLoader java.lang.Module"
                            + " java.util.Properties",
                    "no threads: java.lang.Thread java.lang.ThreadLocal");

    /** Of these classes nothing may be used but the members named. */
    private static final Map<String, Set<String>> ONLY_THESE_MEMBERS =
            Map.of(
                    "java.lang.Math", Set.of("abs", "min", "max", "floor", "ceil", "sqrt"),
                    "java.lang.System", Set.of("arraycopy"),
                    "java.lang.Class",
                            Set.of(
                                    "cast",
                                    "isInstance",
                                    "getName",
                                    "getSimpleName",
                                    "getEnumConstants",
                                    "desiredAssertionStatus"));

    /** Members that no class may use, each line with its reason; a star is any class. */
    private static final List<String> BANNED_MEMBERS =
            List.of(
                    "depends on the place: String.format String.toLowerCase String.toUpperCase"
                            + " DateTimeFormatter.ofPattern DateTimeFormatter.ofLocalizedDate"
                            + " DateTimeFormatter.ofLocalizedDateTime ZoneId.systemDefault"
                            + " String.getBytes()",
                    "depends on the time: LocalDate.now LocalDateTime.now LocalTime.now"
                            + " OffsetDateTime.now ZonedDateTime.now OffsetTime.now Instant.now"
                            + " Year.now YearMonth.now MonthDay.now",
                    "missing in the browser: String.lines String.indent String.transform"
                            + " Duration.toSeconds Duration.toDaysPart Duration.toHoursPart"
                            + " Duration.toMinutesPart Duration.toSecondsPart Duration.toMillisPart"
                            + " Duration.toNanosPart Duration.dividedBy(Duration)"
                            + " Duration.truncatedTo LocalDate.EPOCH LocalDate.ofInstant"
                            + " LocalDate.datesUntil BigDecimal.sqrt Matcher.results"
                            + " Matcher.replaceAll(Function) Matcher.replaceFirst(Function)"
                            + " Pattern.asPredicate Pattern.splitAsStream Stream.ofNullable"
                            + " Character.toString(int) Arrays.compare"
                            + " Collections.unmodifiableSortedMap",
                    "order differs from run to run: Map.copyOf Map.ofEntries Set.copyOf"
                            + " Collectors.toSet Collectors.toUnmodifiableSet"
                            + " Collectors.toUnmodifiableMap Collectors.toMap(Function,Function)"
                            + " Collectors.toMap(Function,Function,BinaryOperator)"
                            + " Collectors.groupingBy(Function)"
                            + " Collectors.groupingBy(Function,Collector)"
                            + " Collectors.toConcurrentMap Collectors.groupingByConcurrent"
                            + " Collections.shuffle",
                    "no threads: *.parallelStream Stream.parallel IntStream.parallel"
                            + " LongStream.parallel DoubleStream.parallel *.wait *.notify"
                            + " *.notifyAll",
                    "no console: *.printStackTrace",
                    "last digit differs, use own formatter: Double.toString"
                            + " String.valueOf(double) StringBuilder.append(double)"
                            + " StringBuilder.insert(int,double)");

    private CoreBans() {}

    /** Returns the rule that classes use only the packages listed, and their own project. */
    static ArchRule onlyListedPackages() {
        return rule(
                new ArchCondition<>("use only the listed packages of the library") {
                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        for (Dependency arrow : item.getDirectDependenciesFromSelf()) {
                            JavaClass target = arrow.getTargetClass().getBaseComponentType();
                            if (!target.isPrimitive() && !isListed(target.getPackageName())) {
                                report(arrow, arrow.getDescription(), "not listed", events);
                            }
                        }
                    }
                });
    }

    private static boolean isListed(String name) {
        return LIBRARY.contains(name) || (name + ".").startsWith(CoreClasses.ROOT + ".");
    }

    /** Returns the rule that classes stay away from the banned ones. */
    static ArchRule noBannedClasses() {
        Map<String, String> reasons = Bans.reasonsByName(BANNED_CLASSES);
        return rule(
                new ArchCondition<>("use no banned class") {
                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        for (Dependency arrow : item.getDirectDependenciesFromSelf()) {
                            String name = arrow.getTargetClass().getBaseComponentType().getName();
                            String outer = name.contains("$") ? name.split("\\$", -1)[0] : name;
                            String reason = reasons.get(outer);
                            if (reason != null) {
                                report(arrow, arrow.getDescription(), reason, events);
                            }
                        }
                    }
                });
    }

    /** Returns the rule that classes call no banned method and read no banned constant. */
    static ArchRule noBannedMembers() {
        Map<String, String> reasons = Bans.reasonsByName(BANNED_MEMBERS);
        return rule(
                new ArchCondition<>("use no banned member") {
                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        for (JavaAccess<?> access : item.getAccessesFromSelf()) {
                            String reason = reasonAgainst(access, reasons);
                            if (!reason.isEmpty()) {
                                report(access, access.getDescription(), reason, events);
                            }
                        }
                    }
                });
    }

    private static String reasonAgainst(JavaAccess<?> access, Map<String, String> reasons) {
        AccessTarget target = access.getTarget();
        Set<String> only = ONLY_THESE_MEMBERS.get(target.getOwner().getName());
        if (only != null && !only.contains(target.getName())) {
            return "of this class only " + only;
        }
        if (usesHashCode(access)) {
            return "hash codes differ, use them in hashCode only";
        }
        String name = target.getOwner().getSimpleName() + "." + target.getName();
        if (!(target instanceof CodeUnitAccessTarget called)) {
            return reasons.getOrDefault(name, "");
        }
        List<String> types =
                called.getRawParameterTypes().stream().map(JavaClass::getSimpleName).toList();
        if (isUnorderedLiteral(name, types)) {
            return "order differs from run to run, use LinkedHashMap, TreeMap, EnumMap or a list";
        }
        String exact = name + "(" + String.join(",", types) + ")";
        return Stream.of(exact, name, "*." + target.getName())
                .filter(reasons::containsKey)
                .map(reasons::get)
                .findFirst()
                .orElse("");
    }

    private static boolean usesHashCode(JavaAccess<?> access) {
        String name = access.getTarget().getName();
        boolean hashes =
                name.equals("hashCode") || name.equals("deepHashCode") || isObjectsHash(access);
        return hashes && !access.getOrigin().getName().equals("hashCode");
    }

    private static boolean isObjectsHash(JavaAccess<?> access) {
        return access.getTargetOwner().isEquivalentTo(java.util.Objects.class)
                && access.getTarget().getName().equals("hash");
    }

    /** One pair or one element has only one order; more have one that changes with each run. */
    private static boolean isUnorderedLiteral(String name, List<String> types) {
        return (name.equals("Map.of") && types.size() > 2)
                || (name.equals("Set.of") && (types.size() > 1 || types.contains("Object[]")));
    }

    private static ArchRule rule(ArchCondition<JavaClass> condition) {
        return ArchRuleDefinition.classes()
                .should(condition)
                .because("the core gives the same bits on the Java machine and in the browser")
                .allowEmptyShould(true);
    }

    private static void report(Object at, String what, String reason, ConditionEvents events) {
        events.add(SimpleConditionEvent.violated(at, what + " [" + reason + "]"));
    }
}
