package org.fandown.judgement;

import java.util.List;

/**
 * What an operator's defects found at the roadside weigh in the Union's risk rating. The rating
 * itself sets the points against the number of checks; how, was not read, so it is not done here.
 *
 * <p><i>Source:</i> COM(2012) 382, the proposal that became Directive 2014/47/EU, Annex I: a
 * dangerous defect counts 40, a major one 10, a minor one 1; years 1, 2 and 3 count three times,
 * twice and once. The directive as adopted was not compared.
 *
 * @param dangerous dangerous defects of one year, not negative
 * @param major major defects of that year, not negative
 * @param minor minor defects of that year, not negative
 */
public record OperatorRisk(int dangerous, int major, int minor) {
    private static final long PER_DANGEROUS = 40;
    private static final long PER_MAJOR = 10;
    private static final int YEARS = 3;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public OperatorRisk {
        if (dangerous < 0 || major < 0 || minor < 0) {
            throw new IllegalArgumentException("A number of defects cannot be negative.");
        }
    }

    /** The points of this year, before the year is weighed. */
    public long points() {
        return dangerous * PER_DANGEROUS + major * PER_MAJOR + minor;
    }

    /**
     * The points of up to three years together, each year weighed.
     *
     * @param years year 1 first; a year left out at the end counts nothing
     * @throws IllegalArgumentException if there are more than three
     */
    public static long weighed(List<OperatorRisk> years) {
        if (years.size() > YEARS) {
            throw new IllegalArgumentException("Defects of no more than three years count.");
        }
        long sum = 0;
        for (int i = 0; i < years.size(); i++) {
            sum += years.get(i).points() * (YEARS - i);
        }
        return sum;
    }
}
