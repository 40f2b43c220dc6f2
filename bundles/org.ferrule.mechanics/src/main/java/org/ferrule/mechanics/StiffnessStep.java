/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.mechanics;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Places where the bending stiffness changes at once by more than a factor of three, where a shaft tends to kink or a
 * wire to prolapse: a rule of thumb (common practice) that points at places to look at.
 */
public final class StiffnessStep {
    /** The factor above which a step is pointed out. */
    public static final double FACTOR = 3;

    private StiffnessStep() {
    }

    /**
     * Returns how many times the stiffer neighbour is as stiff as the softer one, 1 or more.
     *
     * @param oneNmm2 the stiffness of one of them, above zero
     * @param otherNmm2 the stiffness of the other, above zero
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static double ratio(double oneNmm2, double otherNmm2) {
        Check.positive("stiffness in N mm2", oneNmm2);
        Check.positive("stiffness in N mm2", otherNmm2);
        return Math.max(oneNmm2, otherNmm2) / Math.min(oneNmm2, otherNmm2);
    }

    /**
     * Returns the numbers of the sections, from 0, behind which the stiffness steps by more than the factor.
     *
     * @param stiffnessesNmm2 the stiffness of each section in order, above zero
     * @throws IllegalArgumentException naming a figure that is out of range
     */
    public static List<Integer> cliffs(double... stiffnessesNmm2) {
        return IntStream.range(0, stiffnessesNmm2.length - 1)
                .filter(i -> ratio(stiffnessesNmm2[i], stiffnessesNmm2[i + 1]) > FACTOR).boxed().toList();
    }
}
