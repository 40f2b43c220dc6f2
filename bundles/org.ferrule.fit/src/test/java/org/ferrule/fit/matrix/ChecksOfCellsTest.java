/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Which checks cells hear of, and what becomes of devices that do not fit into plain numbers. */
class ChecksOfCellsTest {
    private static final SampleDevice MICRO = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm");

    /** A check that forbids every pair, or only warns of it. */
    private record Strict(Verdict verdict, boolean inMatrix, boolean concerned) implements FitCheck {
        @Override
        public Finding check(FitQuestion question, Phase phase) {
            return Finding.of(verdict, List.of(Reason.of(ReasonCode.OPEN_EDGE)));
        }

        @Override
        public boolean concerns(Terms terms) {
            return concerned;
        }
    }

    /** A check that concerns one device. */
    private record OfDevice(String id) implements FitCheck {
        @Override
        public Finding check(FitQuestion question, Phase phase) {
            boolean isIt = question.inner().device().id().equals(id);
            return Finding.of(isIt ? Verdict.BLOCKED : Verdict.FITS, List.of());
        }

        @Override
        public boolean concerns(Terms terms, ReadDevice inner) {
            return inner.device().id().equals(id);
        }
    }

    @Test
    void checkOfAPlugInIsHeard() {
        assertEquals(Verdict.BLOCKED, cell(new Strict(Verdict.BLOCKED, true, true)).in().verdict());
        assertTrue(cell(new Strict(Verdict.FITS, true, true)).hasCaution());
    }

    @Test
    void checkThatIsNotForMatricesIsHeardInSingleAnswersAlone() {
        FitMatrix matrix = matrix(MICRO, "1.0 mm", TestRules.exact().rules(), new Strict(Verdict.FITS, false, true));
        assertFalse(matrix.cell(0, 0).hasCaution());
        assertTrue(matrix.answer(0, 0).in().hasCaution());
    }

    @Test
    void checkThatIsNotConcernedIsLeftOut() {
        assertFalse(cell(new Strict(Verdict.FITS, true, false)).hasCaution());
    }

    @Test
    void checkOfOneDeviceIsHeardForThatDevice() {
        assertEquals(Verdict.BLOCKED, cell(new OfDevice("m")).in().verdict());
        assertEquals(Verdict.FITS, cell(new OfDevice("other")).in().verdict());
    }

    @Test
    void withoutTheGeometryNothingIsKnown() {
        FitMatrix matrix = matrix(MICRO, "1.0 mm", TestRules.exact().rules(), List.of(new LengthCheck()));
        assertEquals(Verdict.UNKNOWN, matrix.cell(0, 0).in().verdict());
    }

    @Test
    void rulesWithoutAClearanceAreTold() {
        RuleSet rules = TestRules.silent().spans("0 mm", "0 mm").growth("1", "1", "1").rules();
        assertThrows(RuleSetException.class, () -> matrix(MICRO, "1.0 mm", rules, List.of(new PassageCheck())));
        assertEquals(Verdict.BLOCKED, matrix(MICRO, "0.5 mm", rules, List.of(new PassageCheck())).cell(0, 0).in()
                .verdict(), "what stops needs no rule");
    }

    @Test
    void rulesThatDoNotSayHowMuchWireStaysAheadAreTold() {
        RuleSet rules = TestRules.silent().spans("0 mm", "0 mm").growth("1", "1", "1").required("0 mm").rules();
        ReadDevice outer = ReadDevice.of(guide("g", "1 mm").device(), rules);
        MatrixQuestion question = new MatrixQuestion(List.of(new MatrixLine(outer, outer.device().lumens().get(0))),
                List.of(ReadDevice.of(MICRO.device(), rules)), Direction.OVER_WIRE_TAIL, Optional.empty(), rules,
                FitSolver.standard(List.of()));
        assertThrows(RuleSetException.class, () -> FitMatrix.solve(question, Progress.SILENT));
    }

    @Test
    void hugeDevicesAreAnsweredToo() {
        FitMatrix matrix = matrix(MICRO, "40 mm", TestRules.exact().rules(), new EdgeCheck());
        assertEquals(FitCell.of(matrix.answer(0, 0)), matrix.cell(0, 0));
        assertEquals(39.1, matrix.cell(0, 0).limiting().orElseThrow().worst().mm());
    }

    @Test
    void deviceOfManySectionsNamesTheNinth() {
        SampleDevice many = device("m", DeviceKind.MICROCATHETER).length("9 cm");
        for (int i = 0; i < 9; i++) {
            many.section("part " + i, i + " cm", i + 1 + " cm", i == 8 ? "0.9 mm" : "0.5 mm");
        }
        FitMatrix matrix = matrix(many, "1.0 mm", TestRules.exact().rules(), new EdgeCheck());
        assertEquals("part 8", matrix.cell(0, 0).limiting().orElseThrow().deviceSection());
        FitMatrix again = matrix.resolve(question(many, "1.0 mm", TestRules.exact().rules(),
                matrix.question().solver()), Progress.SILENT);
        assertEquals(List.of(), again.changes().toList());
    }

    @Test
    void conditionsAreAskedOfTheSolver() {
        MatrixQuestion alone = question(MICRO, "1.0 mm", TestRules.exact().rules(), FitSolver.standard(List.of()));
        Conditions inflated = new Conditions(List.of(), Optional.empty(), List.of(), true);
        MatrixQuestion question = new MatrixQuestion(alone.outer(), alone.inner(), alone.direction(), alone.reach(),
                inflated, alone.rules(), alone.solver());
        FitMatrix matrix = FitMatrix.solve(question, Progress.SILENT);
        assertEquals(FitCell.of(matrix.answer(0, 0)), matrix.cell(0, 0));
    }

    private static FitCell cell(FitCheck check) {
        return matrix(MICRO, "1.0 mm", TestRules.exact().rules(), check).cell(0, 0);
    }

    private static FitMatrix matrix(SampleDevice inner, String lumen, RuleSet rules, FitCheck check) {
        return matrix(inner, lumen, rules, List.of(new PassageCheck(), check));
    }

    private static FitMatrix matrix(SampleDevice inner, String lumen, RuleSet rules, List<FitCheck> checks) {
        return FitMatrix.solve(question(inner, lumen, rules, FitSolver.with(checks, List.of())), Progress.SILENT);
    }

    private static MatrixQuestion question(SampleDevice inner, String lumen, RuleSet rules, FitSolver solver) {
        ReadDevice outer = ReadDevice.of(guide("g", lumen).device(), rules);
        return new MatrixQuestion(List.of(new MatrixLine(outer, outer.device().lumens().get(0))),
                List.of(ReadDevice.of(inner.device(), rules)), Direction.TIP_FIRST, Optional.empty(), rules, solver);
    }
}
