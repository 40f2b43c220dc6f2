/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.matrix.FitCell.LimitingPlace;
import org.ferrule.fit.quick.Marks;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * A cell in eight bytes. From the lowest bit: verdicts, authorities and marks as {@link Marks} puts them (10 bits), place
 * among the names of the lumen's sections (3) and of the device's sections (3), worst clearance (27), how far the
 * nominal clearance lies above it (21); clearances in thirds of a nanometre. What does not fit into these (more than
 * eight names, clearances beyond -15 mm or 29 mm) stays elsewhere: with the solver.
 */
final class CellWord {
    /** How many names of sections there may be on either side. */
    static final int NAMES = 8;

    private static final PhaseVerdict[] PHASES = phases();
    private static final int LUMEN_SECTION = Marks.BITS;
    private static final int DEVICE_SECTION = LUMEN_SECTION + 3;
    private static final int WORST = DEVICE_SECTION + 3;
    private static final int SPREAD = WORST + 27;
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

    private static PhaseVerdict[] phases() {
        PhaseVerdict[] phases = new PhaseVerdict[Marks.PHASE];
        for (Verdict verdict : Verdict.values()) {
            for (Authority authority : Authority.values()) {
                phases[Marks.phase(verdict.ordinal(), authority.ordinal())] = new PhaseVerdict(verdict, authority);
            }
        }
        return phases;
    }

    /** Marks with a place; names are counted from 0, and -1 is none of them. */
    static long at(int marks, int lumenName, int deviceName, long worst, long nominal) {
        return holds(lumenName, deviceName, worst, nominal)
                ? marks | (long) lumenName << LUMEN_SECTION | (long) deviceName << DEVICE_SECTION
                        | worst + ZERO << WORST | nominal - worst << SPREAD
                : marks | ELSEWHERE << WORST;
    }

    /** Whether a word can tell a place. */
    static boolean holds(int lumenName, int deviceName, long worst, long nominal) {
        long code = worst + ZERO;
        long spread = nominal - worst;
        return code >= LEAST && code <= WORST_MASK && spread >= 0 && spread <= MOST_SPREAD && isIndex(lumenName)
                && isIndex(deviceName);
    }

    /** What a lumen adds to a word that can tell its place. */
    static long ofLumen(int marks, int name, long low, long centre) {
        return marks + ((long) name << LUMEN_SECTION) + (low + ZERO << WORST) + (centre - low << SPREAD);
    }

    /** What the device adds to it. */
    static long ofDevice(int name, long high, long centre) {
        return ((long) name << DEVICE_SECTION) - (high << WORST) + (high - centre << SPREAD);
    }

    private static boolean isIndex(int name) {
        return name >= 0 && name < NAMES;
    }

    /** The word of a cell. */
    static long of(FitCell cell, List<String> lumenNames, List<String> deviceNames) {
        int marks = Marks.of(cell.in().verdict().ordinal(), cell.in().authority().ordinal(),
                cell.out().verdict().ordinal(), cell.out().authority().ordinal(), cell.hasConflict(),
                cell.hasCaution());
        return cell.limiting().map(place -> at(marks, lumenNames.indexOf(place.lumenSection()),
                deviceNames.indexOf(place.deviceSection()), place.worst().thirdNanometres(),
                place.nominal().thirdNanometres())).orElse((long) marks);
    }

    /** Whether the place is not in the word, but with the solver. */
    static boolean isElsewhere(long word) {
        return worstCode(word) == ELSEWHERE;
    }

    /** Whether two words differ in more than the places of names. */
    static boolean differ(long a, long b) {
        return ((a ^ b) & ~SECTIONS) != 0;
    }

    static int marks(long word) {
        return (int) word & (1 << Marks.BITS) - 1;
    }

    /** The verdict of a phase of {@link Marks}. */
    static PhaseVerdict phase(int phase) {
        return PHASES[phase];
    }

    /** The cell of a word that is not elsewhere. */
    static FitCell cell(long word, List<String> lumenNames, List<String> deviceNames) {
        int marks = marks(word);
        return new FitCell(phase(Marks.in(marks)), phase(Marks.out(marks)), Marks.hasConflict(marks),
                Marks.hasCaution(marks), place(word, lumenNames, deviceNames));
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
