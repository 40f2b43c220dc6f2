/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.matrix.FitCell.LimitingPlace;
import org.ferrule.fit.quick.Marks;
import org.ferrule.fit.sample.Texts;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Eight bytes hold a cell exactly, or say that they do not. */
class CellWordTest {
    private static final List<String> NAMES = IntStream.range(0, 9).mapToObj(i -> "part " + i).toList();

    @Test
    void holdsEveryVerdictOnEveryAuthorityWithItsMarks() {
        for (Verdict verdict : Verdict.values()) {
            for (Authority authority : Authority.values()) {
                PhaseVerdict in = new PhaseVerdict(verdict, authority);
                PhaseVerdict out = new PhaseVerdict(Verdict.TIGHT, Authority.BENCH);
                assertHeld(new FitCell(in, out, false, true, Optional.empty()));
                assertHeld(new FitCell(out, in, true, false, Optional.empty()));
            }
        }
    }

    @Test
    void holdsClearancesToTheThirdOfANanometre() {
        for (long worst : new long[] { -45_000_000, -1, 0, 1, 2, 9_999_999, 89_000_000 }) {
            for (long spread : new long[] { 0, 1, 2_097_151 }) {
                assertHeld(cell(new Length(worst), new Length(worst + spread), "part 7", "part 0"));
            }
        }
    }

    @Test
    void leavesElsewhereWhatIsTooFar() {
        assertFalse(isHeld(cell(Texts.length("-16 mm"), Texts.length("-16 mm"), "part 0", "part 0")));
        assertFalse(isHeld(cell(Texts.length("30 mm"), Texts.length("30 mm"), "part 0", "part 0")));
        assertFalse(isHeld(cell(Length.ZERO, Texts.length("0.7 mm"), "part 0", "part 0")));
    }

    @Test
    void leavesElsewhereTheNinthNameAndUnknownOnes() {
        assertFalse(isHeld(cell(Length.ZERO, Length.ZERO, "part 8", "part 0")));
        assertFalse(isHeld(cell(Length.ZERO, Length.ZERO, "part 0", "part 8")));
        assertFalse(isHeld(cell(Length.ZERO, Length.ZERO, "another", "part 0")));
    }

    @Test
    void saysItsVerdictsEvenIfItsPlaceIsElsewhere() {
        long word = CellWord.of(cell(Length.ZERO, Length.ZERO, "part 8", "part 0"), NAMES, NAMES);
        assertEquals(new PhaseVerdict(Verdict.FITS, Authority.CLAIM),
                CellWord.phase(Marks.in(CellWord.marks(word))));
    }

    @Test
    void tellsOtherNumbersFromOtherNames() {
        long word = CellWord.of(cell(Length.ZERO, Length.ZERO, "part 0", "part 0"), NAMES, NAMES);
        long named = CellWord.of(cell(Length.ZERO, Length.ZERO, "part 1", "part 2"), NAMES, NAMES);
        long wider = CellWord.of(cell(new Length(1), new Length(1), "part 0", "part 0"), NAMES, NAMES);
        assertFalse(CellWord.differ(word, named));
        assertTrue(CellWord.differ(word, wider));
    }

    private static FitCell cell(Length worst, Length nominal, String lumenSection, String deviceSection) {
        return new FitCell(new PhaseVerdict(Verdict.FITS, Authority.CLAIM),
                new PhaseVerdict(Verdict.BLOCKED, Authority.GEOMETRY), true, true,
                Optional.of(new LimitingPlace(worst, nominal, lumenSection, deviceSection)));
    }

    private static boolean isHeld(FitCell cell) {
        return !CellWord.isElsewhere(CellWord.of(cell, NAMES, NAMES));
    }

    private static void assertHeld(FitCell cell) {
        assertTrue(isHeld(cell), cell::toString);
        assertEquals(cell, CellWord.cell(CellWord.of(cell, NAMES, NAMES), NAMES, NAMES));
    }
}
