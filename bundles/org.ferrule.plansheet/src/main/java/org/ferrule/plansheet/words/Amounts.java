/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;

/** Amounts of time, contrast, dose and money with their units; what is used up is never rounded down. */
public final class Amounts {
    private static final int EXACT_DECIMALS = 6;
    private static final int BOUND_DIGITS = 6;
    private static final BigDecimal WHOLE_FROM = BigDecimal.valueOf(100);

    private final Phrases phrases;
    private final String currency;

    /**
     * Amounts in a currency.
     *
     * @param currency word or sign for it; empty when nobody says
     */
    Amounts(Phrases phrases, String currency) {
        this.phrases = phrases;
        this.currency = currency;
    }

    /** What is used up, rounded up: to a tenth, from 100 on to whole ones. */
    public String used(Resource resource, double amount) {
        return withUnit(resource, number(amount));
    }

    /** The number of an amount that is used up, without its unit. */
    public String number(double amount) {
        BigDecimal exact = exact(amount);
        return plain(exact.setScale(exact.compareTo(WHOLE_FROM) >= 0 ? 0 : 1, RoundingMode.CEILING));
    }

    /** What somebody set, as it was set. */
    public String stated(Resource resource, double amount) {
        return withUnit(resource, plain(exact(amount)));
    }

    /** Two significant digits, to the nearest: of a figure that only compares. */
    public String compared(Resource resource, double amount) {
        return withUnit(resource, compared(amount));
    }

    /** What a step uses up, without what is zero; empty when all is. */
    public String all(Costs costs) {
        List<String> parts = new ArrayList<>();
        for (Resource resource : Resource.values()) {
            if (costs.of(resource) > 0) {
                parts.add(used(resource, costs.of(resource)));
            }
        }
        return String.join(", ", parts);
    }

    /** A share between 0 and 1, to two significant digits. */
    public static String share(double share) {
        return plain(BigDecimal.valueOf(share).round(new MathContext(2, RoundingMode.HALF_EVEN)));
    }

    /**
     * A bound between which and a figure nothing changes, with as few digits as keep it between the two.
     *
     * @param bound exact
     * @param figure on the other side of what is stated
     */
    static String inward(double bound, double figure) {
        RoundingMode towards = bound < figure ? RoundingMode.CEILING : RoundingMode.FLOOR;
        for (int digits = 2; digits < BOUND_DIGITS; digits++) {
            BigDecimal rounded = BigDecimal.valueOf(bound).round(new MathContext(digits, towards));
            if (Math.abs(rounded.doubleValue() - figure) <= Math.abs(bound - figure)
                    && (rounded.doubleValue() - figure) * (bound - figure) >= 0) {
                return plain(rounded);
            }
        }
        return plain(BigDecimal.valueOf(bound).round(new MathContext(BOUND_DIGITS, towards)));
    }

    /** The unit by itself; of money the currency. */
    public String unit(Resource resource) {
        return resource == Resource.MONEY ? currencyWord() : phrases.get("unit." + resource);
    }

    private String currencyWord() {
        return currency.isBlank() ? phrases.get("unit.MONEY") : currency;
    }

    private String withUnit(Resource resource, String number) {
        return phrases.fill("amount", number, unit(resource));
    }

    /** The number of a figure that only compares: two significant digits, from 100 on whole ones. */
    static String compared(double amount) {
        BigDecimal exact = exact(amount);
        boolean large = exact.compareTo(WHOLE_FROM) >= 0;
        return plain(large ? exact.setScale(0, RoundingMode.HALF_EVEN)
                : exact.round(new MathContext(2, RoundingMode.HALF_EVEN)));
    }

    /** Without the last digits of a sum of doubles. */
    private static BigDecimal exact(double amount) {
        return BigDecimal.valueOf(amount).setScale(EXACT_DECIMALS, RoundingMode.HALF_EVEN);
    }

    private static String plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
