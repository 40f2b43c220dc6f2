/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.sensitivity;

import static org.ferrule.fit.sample.SampleClaim.compatible;
import static org.ferrule.fit.sample.SampleClaim.minimumLumen;
import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.matrix.SolveCancelledException;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;
import org.junit.jupiter.api.Test;

class SensitivityTest {
    private static final RuleSet RULES = TestRules.exact().spans("0.02 mm", "0.02 mm").rules();

    private static FitMatrix matrix(List<SampleDevice> outer, List<SampleDevice> inner) {
        List<MatrixLine> lines = outer.stream().map(SampleDevice::device)
                .map(d -> new MatrixLine(ReadDevice.of(d, RULES), d.mainLumen().orElseThrow())).toList();
        List<ReadDevice> columns = inner.stream().map(d -> ReadDevice.of(d.device(), RULES)).toList();
        return FitMatrix.solve(new MatrixQuestion(lines, columns, Direction.TIP_FIRST, Optional.empty(), RULES,
                FitSolver.standard(List.of())), Progress.SILENT);
    }

    private static List<Influence> ranked(List<SampleDevice> outer, List<SampleDevice> inner) {
        return Sensitivity.of(matrix(outer, inner), Optional.empty(), Progress.SILENT);
    }

    private static Optional<Influence> of(List<Influence> ranked, Class<? extends Place> kind, String device) {
        return ranked.stream().filter(i -> kind.isInstance(i.place()) && i.place().device().id().equals(device))
                .findFirst();
    }

    private static SampleDevice rodOf(String id, String diameter) {
        return rod(id, DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    /** Worst 1.758 - 1.72 - 0.02 = 0.018 mm is tight; with the rod at 1.70 or measured at 1.72 it would fit. */
    @Test
    void countsCellsThatChangeAndThatMeasuringSettles() {
        List<Influence> ranked = ranked(List.of(guide("g", "1.778 mm ±0.02")),
                List.of(rodOf("tight", "1.72 mm"), rodOf("thin", "1 mm")));
        Influence rod = of(ranked, Place.Shaft.class, "tight").orElseThrow();
        assertEquals(new Influence(rod.place(), 1, 1, OptionalInt.of(1)), rod);
        Influence lumen = of(ranked, Place.Bore.class, "g").orElseThrow();
        assertEquals(2, lumen.decides());
        assertEquals(1, lumen.changes());
        assertEquals(OptionalInt.empty(), lumen.settles(), "a stated tolerance is not settled by the rule set's span");
    }

    @Test
    void theWeightiestComesFirst() {
        List<Influence> ranked = ranked(List.of(guide("a", "1.778 mm"), guide("b", "1.778 mm")),
                List.of(rodOf("tight", "1.72 mm"), rodOf("other", "1.721 mm"), rodOf("thin", "1 mm")));
        for (int i = 1; i < ranked.size(); i++) {
            assertTrue(ranked.get(i - 1).changes() >= ranked.get(i).changes());
        }
        assertEquals(2, ranked.get(0).changes());
    }

    @Test
    void aMissingFigureDecidesWhatItLeavesUnknown() {
        List<Influence> ranked = ranked(List.of(guide("g", "1.778 mm")),
                List.of(balloon("b", "?", "0.6 mm"), rodOf("r", "?")));
        Influence balloon = of(ranked, Place.Shaft.class, "b").orElseThrow();
        assertEquals("balloon", balloon.place().name());
        assertEquals(1, balloon.decides());
        assertTrue(balloon.place().isIncomplete());
        assertEquals(1, of(ranked, Place.Shaft.class, "r").orElseThrow().decides());
    }

    @Test
    void theWireBesideTheShaftIsADimensionOfItsOwn() {
        List<Influence> ranked = ranked(List.of(guide("g", "1.778 mm")), List.of(balloon("b", "0.8 mm", "1.36 mm")));
        Influence wire = of(ranked, Place.Wire.class, "b").orElseThrow();
        assertEquals(1, wire.decides());
        assertEquals(1, wire.changes());
    }

    /** Two balloons over one wire of 0.36 ± 0.02 mm: at worst 1.777 - 1.376 - 0.38 leaves 0.021 mm. */
    @Test
    void theWireThatAllRunOverIsOneDimension() {
        Device wire = rod("wire", DeviceKind.GUIDEWIRE, "190 cm", "0.36 mm").device();
        OwnWire own = OwnWire.ofDevice(wire, new FigureReader(RULES));
        List<ReadDevice> columns = List.of("b", "c").stream()
                .map(id -> ReadDevice.over(balloon(id, "0.8 mm", "1.375 mm ±0.001").device(), RULES, own)).toList();
        Device guide = guide("g", "1.778 mm ±0.001").device();
        FitMatrix matrix = FitMatrix.solve(
                new MatrixQuestion(List.of(new MatrixLine(ReadDevice.of(guide, RULES), guide.lumen("lumen"))), columns,
                        Direction.TIP_FIRST, Optional.empty(), RULES, FitSolver.standard(List.of())),
                Progress.SILENT);
        Influence first = Sensitivity.of(matrix, Optional.of(wire), Progress.SILENT).get(0);
        assertEquals(new Influence(new Place.Shaft(wire, 0), 2, 2, OptionalInt.of(2)), first);
    }

    @Test
    void aStatementCountsWhereItDecidesAndWhatGoesWithoutIt() {
        SampleDevice claims = rodOf("claims", "1.77 mm").claim(compatible().devices("g"));
        SampleDevice excluded = rodOf("excluded", "1 mm")
                .claim(minimumLumen("2 mm").kinds(DeviceKind.GUIDE_CATHETER));
        List<Influence> ranked = ranked(List.of(guide("g", "1.778 mm"), guide("h", "1.778 mm")),
                List.of(claims, excluded));
        Influence yes = of(ranked, Place.Statement.class, "claims").orElseThrow();
        assertEquals(new Influence(yes.place(), 1, 1, OptionalInt.empty()), yes);
        Influence no = of(ranked, Place.Statement.class, "excluded").orElseThrow();
        assertEquals(2, no.decides());
        assertEquals(2, no.changes());
    }

    /** "Takes a 0.014 in wire" decides over a wire that the lumen alone would not tell anything of. */
    @Test
    void takingAWireIsAStatementToo() {
        Device micro = SampleDevice.device("m", DeviceKind.MICROCATHETER).length("135 cm").takesWire("0.014 in")
                .overTheWire("135 cm", "?").device();
        Device wire = rod("w", DeviceKind.GUIDEWIRE, "190 cm", "0.014 in").device();
        FitMatrix matrix = FitMatrix.solve(new MatrixQuestion(
                List.of(new MatrixLine(ReadDevice.of(micro, RULES), micro.wireLumen().orElseThrow())),
                List.of(ReadDevice.of(wire, RULES)), Direction.OVER_WIRE_TAIL, Optional.empty(), RULES,
                FitSolver.standard(List.of())), Progress.SILENT);
        Influence statement = of(Sensitivity.of(matrix, Optional.empty(), Progress.SILENT), Place.Statement.class, "m")
                .orElseThrow();
        assertEquals(new Influence(statement.place(), 1, 1, OptionalInt.empty()), statement);
    }

    @Test
    void whatDecidesNothingIsLeftOut() {
        List<Influence> ranked = ranked(List.of(guide("g", "1.778 mm")), List.of(balloon("b", "0.8 mm", "0.6 mm")));
        assertEquals(Optional.empty(), ranked.stream().filter(i -> i.place().name().equals("tip")).findAny());
    }

    @Test
    void endsWithoutAResultWhenNobodyWaits() {
        FitMatrix matrix = matrix(List.of(guide("g", "1.778 mm")), List.of(rodOf("r", "1 mm")));
        assertThrows(SolveCancelledException.class, () -> Sensitivity.of(matrix, Optional.empty(), new Progress() {
            @Override
            public void worked(int done, int total) {
                throw new AssertionError("worked on");
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        }));
    }

    /** Every count again, by printing devices anew and solving whole matrices. */
    @Test
    void agreesWithABruteForceRecount() {
        Random random = new Random(20261126);
        int changes = 0;
        for (int i = 0; i < 6; i++) {
            List<int[]> guides = figures(3, random);
            List<int[]> rods = figures(5, random);
            List<Influence> ranked = ranked(printed(true, guides), printed(false, rods));
            for (int g = 0; g < guides.size(); g++) {
                int expected = changed(guides, rods, guides, g);
                assertEquals(expected, of(ranked, Place.Bore.class, "g" + g).map(Influence::changes).orElse(0));
                changes += expected;
            }
            for (int r = 0; r < rods.size(); r++) {
                int expected = changed(guides, rods, rods, r);
                assertEquals(expected, of(ranked, Place.Shaft.class, "r" + r).map(Influence::changes).orElse(0));
                changes += expected;
            }
        }
        assertTrue(changes > 20, "enough changes: " + changes);
    }

    /** Centre and tolerance in micrometres. */
    private static List<int[]> figures(int number, Random random) {
        return IntStream.range(0, number).mapToObj(i -> new int[] { 1700 + random.nextInt(100), random.nextInt(40) })
                .toList();
    }

    private static List<SampleDevice> printed(boolean guides, List<int[]> figures) {
        return IntStream.range(0, figures.size()).mapToObj(i -> printed(guides, i, figures.get(i))).toList();
    }

    private static SampleDevice printed(boolean guide, int number, int[] figure) {
        String text = figure[0] + " um ±" + figure[1];
        return guide ? guide("g" + number, text) : rodOf("r" + number, text);
    }

    private static int changed(List<int[]> guides, List<int[]> rods, List<int[]> of, int index) {
        List<Verdict> before = verdicts(guides, rods);
        boolean[] changed = new boolean[before.size()];
        for (int sign = -1; sign <= 1; sign += 2) {
            List<int[]> moved = new ArrayList<>(of);
            moved.set(index, new int[] { of.get(index)[0] + sign * of.get(index)[1], 0 });
            List<Verdict> after = verdicts(of == guides ? moved : guides, of == rods ? moved : rods);
            IntStream.range(0, changed.length).forEach(i -> changed[i] |= before.get(i) != after.get(i));
        }
        return (int) IntStream.range(0, changed.length).filter(i -> changed[i]).count();
    }

    private static List<Verdict> verdicts(List<int[]> guides, List<int[]> rods) {
        FitMatrix matrix = matrix(printed(true, guides), printed(false, rods));
        return IntStream.range(0, guides.size() * rods.size())
                .mapToObj(i -> matrix.answer(i / rods.size(), i % rods.size()).in(Phase.IN).verdict()).toList();
    }
}
