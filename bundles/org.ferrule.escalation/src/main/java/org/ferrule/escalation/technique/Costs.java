/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

/**
 * What a step uses up.
 *
 * @param minutes 0 or more
 * @param contrastMl contrast medium, 0 or more
 * @param doseMgy air kerma at the reference point, 0 or more
 * @param money in the currency of the laboratory, beyond what the devices cost; 0 or more
 */
public record Costs(double minutes, double contrastMl, double doseMgy, double money) {

    /** Nothing. */
    public static final Costs NONE = new Costs(0, 0, 0, 0);

    public Costs {
        for (double value : new double[] { minutes, contrastMl, doseMgy, money }) {
            if (!(value >= 0) || Double.isInfinite(value)) {
                throw new IllegalArgumentException("a step cannot use " + minutes + " min, " + contrastMl
                        + " mL, " + doseMgy + " mGy and " + money + " of money");
            }
        }
    }

    /** How much of that. */
    public double of(Resource resource) {
        return switch (Objects.requireNonNull(resource, "resource")) {
            case TIME -> minutes;
            case CONTRAST -> contrastMl;
            case DOSE -> doseMgy;
            case MONEY -> money;
        };
    }

    /** Both together. */
    public Costs plus(Costs other) {
        return new Costs(minutes + other.minutes, contrastMl + other.contrastMl, doseMgy + other.doseMgy,
                money + other.money);
    }

    /** So much of it. */
    public Costs times(double share) {
        return new Costs(minutes * share, contrastMl * share, doseMgy * share, money * share);
    }
}
