/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.matrix.FitCell.LimitingPlace;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * A cell in eight bytes. From the lowest bit: verdict in (2 bits), authority in (2), verdict out (2), authority out (2),
 * conflict (1), caution (1), place among the names of the lumen's sections (3) and of the device's sections (3), worst
 * clearance (27), how far the nominal clearance lies above it (21); clearances in thirds of a nanometre. What does not
 * fit into these (more than eight names, clearances beyond -15 mm or 29 mm) stays elsewhere: with the solver.
 */
final class CellWord {
    /** How many names of sections there may be on either side. */
    static final int NAMES = 8;

    /** How many numbers there are for a verdict on an authority; not all are used. */
    static final int VERDICT_CODES = 16;

    private static final PhaseVerdict[] VERDICTS_BY_CODE = verdictsByCode();
    private static final int OUT = 4;
    private static final int CONFLICT = 8;
    private static final int CAUTION = 9;
    private static final int LUMEN_SECTION = 10;
    private static final int DEVICE_SECTION = 13;
    private static final int WORST = 16;
    private static final int SPREAD = 43;
    private static final long WORST_MASK = (1L << SPREAD - WORST) - 1;
    private static final long NO_PLACE = 0;
    private static final long ELSEWHERE = 1;
    /** What stands for the least clearance that can be told, of -15 mm. */
    private static final long LEAST = 2;
    private static final long ZERO = LEAST + 45_000_000;
    private static final long MOST_SPREAD = (1L << 64 - SPREAD) - 1;
    private static final long SECTIONS = (1L << WORST) - (1L << LUMEN_SECTION);

    private CellWord() {
    }

    private static PhaseVerdict[] verdictsByCode() {
        PhaseVerdict[] byCode = new PhaseVerdict[VERDICT_CODES];
        for (Verdict verdict : Verdict.values()) {
            for (Authority authority : Authority.values()) {
                byCode[verdict.ordinal() | authority.ordinal() << 2] = new PhaseVerdict(verdict, authority);
            }
        }
        return byCode;
    }

    /** The word of a cell without a place. */
    static long of(int verdictIn, int authorityIn, int verdictOut, int authorityOut, boolean conflict,
            boolean caution) {
        return verdictIn | authorityIn << 2 | verdictOut << OUT | authorityOut << OUT + 2
                | (conflict ? 1 << CONFLICT : 0) | (caution ? 1 << CAUTION : 0);
    }

    /** A word without a place, with that place; names are counted from 0, and -1 is none of them. */
    static long at(long word, int lumenName, int deviceName, long worst, long nominal) {
        long code = worst + ZERO;
        long spread = nominal - worst;
        boolean holds = code >= LEAST && code <= WORST_MASK && spread >= 0 && spread <= MOST_SPREAD
                && isIndex(lumenName) && isIndex(deviceName);
        return holds ? word | (long) lumenName << LUMEN_SECTION | (long) deviceName << DEVICE_SECTION | code << WORST
                | spread << SPREAD : word | ELSEWHERE << WORST;
    }

    private static boolean isIndex(int name) {
        return name >= 0 && name < NAMES;
    }

    /** The word of a cell. */
    static long of(FitCell cell, List<String> lumenNames, List<String> deviceNames) {
        long word = of(cell.in().verdict().ordinal(), cell.in().authority().ordinal(),
                cell.out().verdict().ordinal(), cell.out().authority().ordinal(), cell.hasConflict(),
                cell.hasCaution());
        return cell.limiting().map(place -> at(word, lumenNames.indexOf(place.lumenSection()),
                deviceNames.indexOf(place.deviceSection()), place.worst().thirdNanometres(),
                place.nominal().thirdNanometres())).orElse(word);
    }

    /** Whether the place is not in the word, but with the solver. */
    static boolean isElsewhere(long word) {
        return worstCode(word) == ELSEWHERE;
    }

    /** Whether two words differ in more than the places of names. */
    static boolean differ(long a, long b) {
        return ((a ^ b) & ~SECTIONS) != 0;
    }

    /** Verdict and authority going in as one number below {@link #VERDICT_CODES}. */
    static int verdictCodeIn(long word) {
        return (int) word & VERDICT_CODES - 1;
    }

    static PhaseVerdict in(long word) {
        return VERDICTS_BY_CODE[verdictCodeIn(word)];
    }

    static PhaseVerdict out(long word) {
        return in(word >> OUT);
    }

    /** The cell of a word that is not elsewhere. */
    static FitCell cell(long word, List<String> lumenNames, List<String> deviceNames) {
        return new FitCell(in(word), out(word), (word >> CONFLICT & 1) != 0, (word >> CAUTION & 1) != 0,
                place(word, lumenNames, deviceNames));
    }

    private static Optional<LimitingPlace> place(long word, List<String> lumenNames, List<String> deviceNames) {
        long code = worstCode(word);
        if (code == NO_PLACE) {
            return Optional.empty();
        }
        long worst = code - ZERO;
        return Optional.of(new LimitingPlace(new Length(worst), new Length(worst + (word >>> SPREAD)),
                lumenNames.get((int) (word >> LUMEN_SECTION) & NAMES - 1),
                deviceNames.get((int) (word >> DEVICE_SECTION) & NAMES - 1)));
    }

    private static long worstCode(long word) {
        return word >>> WORST & WORST_MASK;
    }
}
