/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Line;
import org.ferrule.picture.Path;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Rect;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.words.Budget;
import org.ferrule.plansheet.words.PlanWords;
import org.junit.jupiter.api.Test;

/** What a plan uses up: as bars, and as figures beside its steps. */
class BudgetBarsTest {
    private static final double LEFT_MM = 3;
    private static final double WIDTH_MM = 80;
    private static final PageStyle STYLE = new PageStyle(1);

    private final Plan plan = SamplePlan.plan();
    private final PlanWords words = SamplePlan.words(plan.ladder());

    private BudgetBars bars(Plan of, Detail detail) {
        return new BudgetBars(of, words, detail, STYLE, WIDTH_MM);
    }

    private static Drawn drawn(BudgetBars bars) {
        PictureBuilder g = new PictureBuilder();
        bars.draw(g, LEFT_MM, 5);
        return Drawn.of(g.picture(100, 100, "bars"));
    }

    private Budget budget(Resource resource) {
        return Budget.of(plan).stream().filter(b -> b.resource() == resource).findFirst().orElseThrow();
    }

    private static List<Rect> rects(Drawn drawn, Resource resource) {
        return drawn.marks("budget:" + resource).stream().map(Drawn.Mark::element).filter(Rect.class::isInstance)
                .map(Rect.class::cast).toList();
    }

    private static Line limit(Drawn drawn, Resource resource) {
        return drawn.marks("budget:" + resource).stream().map(Drawn.Mark::element).filter(Line.class::isInstance)
                .map(Line.class::cast).filter(line -> line.stroke().widthMm() == 0.7).findFirst().orElseThrow();
    }

    /** Lengths are in proportion to what they stand for: the limit tells how long a unit is. */
    @Test
    void piecesFollowEachOtherFromWhatIsUsedToTheWorstInTheScaleOfTheLimit() {
        Drawn drawn = drawn(bars(plan, Detail.full()));
        for (Budget budget : Budget.of(plan)) {
            double unit = (limit(drawn, budget.resource()).from().xMm() - LEFT_MM) / budget.limit().orElseThrow();
            List<Rect> rects = rects(drawn, budget.resource());
            assertEquals(new Box(LEFT_MM, rects.get(0).box().yMm(), WIDTH_MM, 3.2), rects.get(0).box());
            assertEquals(budget.used() * unit, rects.get(1).box().widthMm(), 1e-9);
            assertEquals(plan.rungs().size() + 2, rects.size());
            double at = LEFT_MM + budget.used() * unit;
            for (Rung rung : plan.rungs()) {
                Box piece = rects.get(rung.number() + 1).box();
                assertEquals(at, piece.xMm(), 1e-9);
                at = LEFT_MM + rung.worst().of(budget.resource()) * unit;
                assertEquals(at, piece.rightMm(), 1e-9);
            }
            assertTrue(at <= LEFT_MM + WIDTH_MM && at > LEFT_MM, "within the room of the bar");
            double longer = Math.max(budget.worst(), budget.limit().orElseThrow());
            assertEquals(LEFT_MM + WIDTH_MM / 1.02, LEFT_MM + longer * unit, 1e-9, "as long as there is room");
        }
    }

    @Test
    void aTriangleBelowTheBarStandsAtTheMeanAndALineAcrossItAtTheLimit() {
        Drawn drawn = drawn(bars(plan, Detail.full()));
        Budget time = budget(Resource.TIME);
        Line limit = limit(drawn, Resource.TIME);
        Box bar = rects(drawn, Resource.TIME).get(0).box();
        assertEquals(bar.yMm() - 0.7, limit.from().yMm(), 1e-9);
        assertEquals(bar.bottomMm() + 0.7, limit.to().yMm(), 1e-9);
        assertEquals(limit.from().xMm(), limit.to().xMm(), 1e-9);
        double unit = (limit.from().xMm() - LEFT_MM) / 30;
        Box mean = drawn.marks("budget:TIME").stream().filter(m -> m.element() instanceof Path)
                .findFirst().orElseThrow().box();
        assertEquals(LEFT_MM + time.expected() * unit, mean.centre().xMm(), 1e-9);
        assertTrue(mean.yMm() > bar.centre().yMm() && mean.bottomMm() > bar.bottomMm());
        assertEquals(1.8, mean.widthMm(), 1e-9);
    }

    @Test
    void whatLiesBeyondTheLimitIsHatchedAndStepsWithinItAlternateAndHaveTheirNumbers() {
        Drawn drawn = drawn(bars(plan, Detail.full()));
        List<Rect> rects = rects(drawn, Resource.TIME);
        for (Rung rung : plan.rungs()) {
            Rect piece = rects.get(rung.number() + 1);
            boolean beyond = rung.beyond().contains(Resource.TIME);
            assertEquals(beyond, piece.style().fill().hatch().isPresent());
            Ink ground = beyond ? Ink.PAPER : rung.number() % 2 == 0 ? DrawingInks.LUMEN : DrawingInks.SHAFT;
            assertEquals(ground, piece.style().fill().ground().orElseThrow());
            boolean numbered = drawn.words().stream().anyMatch(w -> w.group().equals("budget:TIME")
                    && w.text().equals(Integer.toString(rung.number()))
                    && Math.abs(w.box().centre().xMm() - piece.box().centre().xMm()) < 1e-9
                    && Math.abs(w.box().centre().yMm() - piece.box().centre().yMm()) < 1e-9);
            assertEquals(!beyond && piece.box().widthMm() > 2, numbered, () -> "number of " + rung.number());
        }
        assertTrue(plan.rungs().stream().anyMatch(r -> r.beyond().contains(Resource.TIME)));
        assertEquals(List.of(), drawn.overlaps());
    }

    @Test
    void withoutBarsTheSumsStandAloneAndTakeLessRoom() {
        Detail without = new Detail(EnumSet.of(Detail.Omission.BARS), 1, 1, 1, 1);
        Drawn drawn = drawn(bars(plan, without));
        assertFalse(drawn.hasGroup("budget:TIME"));
        Drawn full = drawn(bars(plan, Detail.full()));
        assertTrue(full.text().contains(drawn.words().get(0).text()));
        double withBars = bars(plan, Detail.full()).heightMm();
        assertEquals(4 * (3.2 + 1.4 + 1), withBars - bars(plan, without).heightMm(), 1e-9);
        assertTrue(full.marks().stream().allMatch(m -> m.box().bottomMm() <= 5 + withBars), "all within their height");
        assertTrue(full.marks("budget:MONEY").stream().allMatch(m -> m.box().bottomMm() > 5 + withBars - 8));
    }

    @Test
    void aLimitThatIsPassedOrReachedIsACaution() {
        String text = drawn(bars(plan, Detail.full())).text();
        assertTrue(text.contains("beyond the limit from step"), text);
        assertFalse(text.contains("within the limit"), text);
    }

    @Test
    void whereNothingIsPlannedNothingIsAddedToWhatIsUsed() {
        Plan none = SamplePlan.plan(Map.of("true-lumen", false));
        assertEquals(2, rects(drawn(bars(none, Detail.full())), Resource.TIME).size());
    }

    private Drawn figures(Rung rung) {
        PictureBuilder g = new PictureBuilder();
        new Figures(plan, words, STYLE).draw(g, rung, 10, 5);
        return Drawn.of(g.picture(200, 20, "figures"));
    }

    @Test
    void figuresOfAStepAreItsIndexAndWhatIsUsedByThenAndThoseBeyondALimitHaveASign() {
        for (Rung rung : plan.rungs()) {
            Drawn drawn = figures(rung);
            assertEquals(words.rungs().indexNumber(rung), drawn.words().stream().limit(1).map(Drawn.Words::text)
                    .filter(text -> drawn.words().size() == 5).findFirst().orElse(""));
            List<String> used = drawn.words().stream().skip(drawn.words().size() - 4L).map(Drawn.Words::text).toList();
            assertEquals(List.of(Resource.values()).stream()
                    .map(r -> words.budgets().amounts().number(rung.worst().of(r))).toList(), used);
            assertEquals(!rung.beyond().isEmpty(), !drawn.marks().isEmpty(), () -> "signs of " + rung.number());
            assertEquals(List.of(), drawn.overlaps());
        }
    }

    @Test
    void figuresOfAllStepsEndAtOneLineAndASignStandsLeftOfItsFigure() {
        Figures figures = new Figures(plan, words, STYLE);
        Set<Double> ends = new TreeSet<>();
        for (Rung rung : plan.rungs()) {
            Drawn drawn = figures(rung);
            ends.add(Math.rint(drawn.words().get(drawn.words().size() - 1).box().rightMm() * 1e6));
            assertEquals(10 + figures.widthMm(), drawn.words().get(drawn.words().size() - 1).box().rightMm(), 1e-6);
            for (Drawn.Mark sign : drawn.marks().stream().filter(m -> m.element() instanceof Path).toList()) {
                double gap = drawn.words().stream().mapToDouble(w -> w.box().xMm() - sign.box().rightMm())
                        .filter(right -> right > -sign.box().widthMm()).min().orElseThrow();
                assertTrue(gap > 0 && gap < 1, () -> gap + " mm between sign and figure of " + rung.number());
            }
        }
        assertEquals(1, ends.size());
    }

    /** So that a sign and a figure in each column keep apart from the column before. */
    @Test
    void columnsAreAsWideAsTheirWidestFigureWithASign() {
        Plan many = SamplePlan.longPlan();
        PlanWords of = SamplePlan.words(many.ladder());
        Figures figures = new Figures(many, of, STYLE);
        for (Rung rung : many.rungs()) {
            PictureBuilder g = new PictureBuilder();
            figures.draw(g, rung, 10, 5);
            List<Drawn.Words> row = Drawn.of(g.picture(200, 20, "figures")).words();
            for (int i = 1; i < row.size(); i++) {
                double gap = row.get(i).box().xMm() - row.get(i - 1).box().rightMm();
                assertTrue(gap >= 1.4 + PageStyle.leading(STYLE.small()) - 0.01, gap + " mm in row " + rung.number());
            }
        }
    }

    @Test
    void headsOfFiguresStandOverTheirColumnsAndTheGroupOverTheSums() {
        Figures figures = new Figures(plan, words, STYLE);
        PictureBuilder g = new PictureBuilder();
        figures.drawHeads(g, 10, 5);
        Drawn drawn = Drawn.of(g.picture(200, 40, "heads"));
        assertEquals(List.of(), drawn.overlaps());
        List.of("mL", "mGy", "EUR").forEach(unit -> assertTrue(drawn.text().contains(unit), drawn.text()));
        assertTrue(drawn.text().contains("used by then"), drawn.text());
        assertEquals(10 + figures.widthMm(), drawn.words("EUR").box().rightMm(), 1e-6);
        assertTrue(drawn.words().stream().allMatch(w -> w.box().yMm() >= 5
                && w.box().bottomMm() <= 5 + figures.headMm()), "within the height of the head");
        assertTrue(drawn.words().stream().filter(w -> !w.text().startsWith("used by")).allMatch(w -> w.box()
                .xMm() >= 10 + 1.4 - 0.11), "a gap before the first column too");
        assertTrue(drawn.words("EUR").box().yMm() > drawn.words().stream()
                .filter(w -> w.text().startsWith("used by then")).findFirst().orElseThrow().box().bottomMm());
    }
}
