/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Matrices: single answers side by side, solved again only where something changed. */
class FitMatrixTest {
    private static final RuleSet RULES = TestRules.exact().rules();
    private static final FitSolver SOLVER = FitSolver.standard(List.of());

    private final List<MatrixLine> outer = List.of(line("g1", "1.0 mm"), line("g2", "1.2 mm"), line("g3", "1.4 mm"));
    private final List<ReadDevice> inner = List.of(column("a", "0.9 mm"), column("b", "1.1 mm"));

    @Test
    void countsVerdictsGoingIn() {
        FitMatrix matrix = solve(outer, inner);
        assertEquals(Map.of(Verdict.FITS, 5, Verdict.TIGHT, 0, Verdict.UNKNOWN, 0, Verdict.BLOCKED, 1),
                matrix.counts());
    }

    @Test
    void firstMatrixChangesNothing() {
        assertTrue(solve(outer, inner).changes().isEmpty());
    }

    @Test
    void editOfOneDeviceAsksOnlyItsColumn() {
        FitMatrix before = solve(outer, inner);
        List<ReadDevice> edited = List.of(inner.get(0), column("b", "1.3 mm"));
        FitMatrix after = before.resolve(question(outer, edited), Progress.SILENT);
        assertEquals(before.cell(1, 0), after.cell(1, 0));
        assertEquals(List.of("0,1", "1,1", "2,1"), places(after));
        assertEquals(List.of("1,1"), after.changes().stream().filter(CellChange::changesVerdict)
                .map(FitMatrixTest::place).toList());
        assertEquals(Optional.of(before.cell(1, 1)), after.changes().toList().get(1).before());
    }

    @Test
    void deviceReadAgainWithTheSameFiguresChangesNothing() {
        FitMatrix before = solve(outer, inner);
        FitMatrix after = before.resolve(question(outer, List.of(inner.get(0), column("b", "1.1 mm"))),
                Progress.SILENT);
        assertEquals(List.of(), after.changes().toList());
    }

    @Test
    void orderOfLinesChangesNothing() {
        FitMatrix before = solve(outer, inner);
        FitMatrix after = before.resolve(question(List.of(outer.get(2), outer.get(0), outer.get(1)), inner),
                Progress.SILENT);
        assertEquals(List.of(), after.changes().toList());
        assertEquals(before.cell(2, 1), after.cell(0, 1));
    }

    @Test
    void newDeviceHasNoFormerAnswer() {
        FitMatrix before = solve(outer, inner.subList(0, 1));
        FitMatrix after = before.resolve(question(outer, inner), Progress.SILENT);
        assertEquals(List.of("0,1", "1,1", "2,1"), places(after));
        assertTrue(after.changes().stream().allMatch(c -> c.before().isEmpty() && c.changesVerdict()));
    }

    @Test
    void otherConditionsAskEverythingAgain() {
        FitMatrix before = solve(outer, inner);
        MatrixQuestion strict = new MatrixQuestion(outer, inner, Direction.TIP_FIRST, Optional.empty(),
                TestRules.exact().required("0.15 mm").rules(), SOLVER);
        FitMatrix after = before.resolve(strict, Progress.SILENT);
        assertEquals(List.of("0,0", "1,1"), places(after), "those that the stricter rule makes tight");
        assertEquals(2, after.counts().get(Verdict.TIGHT));
    }

    @Test
    void devicesOfTwoLibrariesMayShareAnId() {
        List<ReadDevice> twins = List.of(column("a", "0.9 mm"), column("a", "1.1 mm"));
        FitMatrix before = solve(outer, twins);
        FitMatrix same = before.resolve(question(outer, twins), Progress.SILENT);
        assertEquals(List.of(), same.changes().toList());
        FitMatrix edited = before.resolve(question(outer, List.of(twins.get(0), column("a", "1.3 mm"))),
                Progress.SILENT);
        assertEquals(List.of("0,1", "1,1", "2,1"), places(edited));
        assertEquals(Optional.of(before.cell(0, 1)), edited.changes().toList().get(0).before());
    }

    @Test
    void twoLumensOfADeviceAreTwoLines() {
        SampleDevice dual = rod("d", DeviceKind.DUAL_LUMEN_MICROCATHETER, "140 cm", "1.1 mm")
                .overTheWire("140 cm", "0.4 mm").working("140 cm", "1.0 mm");
        ReadDevice read = ReadDevice.of(dual.device(), RULES);
        List<MatrixLine> lines = read.device().lumens().stream().map(l -> new MatrixLine(read, l)).toList();
        FitMatrix before = solve(lines, inner);
        assertEquals(Verdict.BLOCKED, before.answer(0, 0).in().verdict());
        assertEquals(Verdict.FITS, before.answer(1, 0).in().verdict());
        FitMatrix swapped = before.resolve(question(List.of(lines.get(1), lines.get(0)), inner), Progress.SILENT);
        assertEquals(List.of(), swapped.changes().toList());
    }

    @Test
    void lineNeedsALumenOfItsDevice() {
        Exception refused = assertThrows(IllegalArgumentException.class,
                () -> new MatrixLine(outer.get(0).device(), outer.get(1).lumen()));
        assertTrue(refused.getMessage().contains("\"g1\""));
    }

    @Test
    void tellsHowFarItIs() {
        List<String> told = new ArrayList<>();
        FitMatrix.solve(question(different(70), inner), new Watching(told, 3));
        assertEquals(List.of("32/70", "64/70", "70/70"), told);
    }

    @Test
    void linesThatAreAnsweredAlikeAreAskedOnce() {
        List<String> told = new ArrayList<>();
        List<MatrixLine> alike = IntStream.range(0, 70).mapToObj(i -> line("g" + i, "1.0 mm")).toList();
        FitMatrix matrix = FitMatrix.solve(question(alike, inner), new Watching(told, 3));
        assertEquals(List.of("1/1"), told);
        assertEquals(70, matrix.counts().get(Verdict.BLOCKED));
        assertEquals(matrix.cell(0, 1), matrix.cell(69, 1));
    }

    @Test
    void endsWithoutAResultWhenCancelled() {
        List<String> told = new ArrayList<>();
        assertThrows(SolveCancelledException.class,
                () -> FitMatrix.solve(question(different(70), inner), new Watching(told, 1)));
        assertEquals(List.of("32/70"), told);
    }

    @Test
    void matrixWithoutDevicesIsEmpty() {
        assertFalse(solve(List.of(), List.of()).counts().values().stream().anyMatch(n -> n > 0));
    }

    /** Cancels after it was told so often. */
    private record Watching(List<String> told, int times) implements Progress {
        @Override
        public void worked(int done, int total) {
            told.add(done + "/" + total);
        }

        @Override
        public boolean isCancelled() {
            return told.size() >= times;
        }
    }

    private static List<MatrixLine> different(int number) {
        return IntStream.range(0, number).mapToObj(i -> line("g" + i, 1 + 0.01 * i + " mm")).toList();
    }

    private static MatrixLine line(String id, String lumen) {
        ReadDevice read = ReadDevice.of(guide(id, lumen).device(), RULES);
        return new MatrixLine(read, read.device().lumens().get(0));
    }

    private static ReadDevice column(String id, String profile) {
        return ReadDevice.of(rod(id, DeviceKind.MICROCATHETER, "135 cm", profile).device(), RULES);
    }

    private static MatrixQuestion question(List<MatrixLine> outer, List<ReadDevice> inner) {
        return new MatrixQuestion(outer, inner, Direction.TIP_FIRST, Optional.empty(), RULES, SOLVER);
    }

    private static FitMatrix solve(List<MatrixLine> outer, List<ReadDevice> inner) {
        return FitMatrix.solve(question(outer, inner), Progress.SILENT);
    }

    private static List<String> places(FitMatrix matrix) {
        return matrix.changes().stream().map(FitMatrixTest::place).toList();
    }

    private static String place(CellChange change) {
        return change.outerIndex() + "," + change.innerIndex();
    }
}
