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
import java.util.function.Consumer;

import org.ferrule.chart.DeviceMaker;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.page.Detail.Omission;
import org.ferrule.plansheet.words.PlanWords;
import org.junit.jupiter.api.Test;

/** What stands in the row of a step. */
class RungCellsTest {
    private static final int ALL = Integer.MAX_VALUE;

    private final Plan plan = SamplePlan.plan();
    private final PlanWords words = SamplePlan.words(plan.ladder());
    private final RungCells full = new RungCells(plan, words, Detail.full());

    private RungCells without(Omission... omissions) {
        return new RungCells(plan, words, new Detail(EnumSet.copyOf(List.of(omissions)), ALL, ALL, ALL, ALL));
    }

    private Rung rung(String move, int attempt) {
        return plan.rungs().stream().filter(r -> r.move().id().equals(move) && r.attempt() == attempt).findFirst()
                .orElseThrow();
    }

    private static Column column() {
        return new Column(new PageStyle(1), 500, ALL);
    }

    private static Drawn drawn(Column column) {
        PictureBuilder g = new PictureBuilder();
        column.draw(g, 0, 0);
        return Drawn.of(g.picture(600, 300, "cell"));
    }

    /** The texts of a cell so wide that each takes one line. */
    private static List<String> texts(Consumer<Column> writer) {
        Column column = column();
        writer.accept(column);
        return drawn(column).words().stream().map(Drawn.Words::text).toList();
    }

    @Test
    void aStepTellsWhatItIsItsMarksWhatItDoesAndItsChance() {
        Rung rupture = rung("rupture", 1);
        assertEquals(List.of("Balloon burst in the cap on purpose", "raised hazard",
                "outside the label: beyond the rated burst pressure", words.rungs().kind(rupture),
                words.rungs().chanceInBrief(rupture)), texts(cell -> full.step(rupture, cell)));
        assertEquals(List.of("Balloon burst in the cap on purpose", "raised hazard",
                "outside the label: beyond the rated burst pressure"),
                texts(cell -> without(Omission.CHANGES, Omission.CHANCES).step(rupture, cell)));
    }

    @Test
    void aSetupTellsWithWhichStepsItWasPlaced() {
        Rung setup = rung("extension", 0);
        List<String> texts = texts(cell -> full.step(setup, cell));
        assertTrue(texts.contains("set-up, stays in place"), texts::toString);
        assertTrue(texts.contains("placed together with steps " + words.rungs().block(setup, plan)), texts::toString);
        List<String> attempt = texts(cell -> full.step(rung("supported", 1), cell));
        assertFalse(attempt.stream().anyMatch(text -> text.startsWith("placed together")), attempt::toString);
    }

    @Test
    void aLaterTryGoesOnWithWhatIsThere() {
        Rung second = rung("small", 2);
        assertTrue(full.isAgain(second));
        assertFalse(full.isAgain(rung("small", 1)));
        assertEquals(List.of("Small balloon, try 2 of 3", words.rungs().chanceInBrief(second)),
                texts(cell -> full.step(second, cell)));
        assertEquals(List.of(), texts(cell -> full.take(second, cell)));
        assertEquals(List.of("as in step " + rung("small", 1).number() + ", with what it took"),
                texts(cell -> full.advice(second, cell)));
    }

    @Test
    void whatIsTakenStandsWithItsFitWhatWasAskedTheBoxAndTheReason() {
        List<String> texts = texts(cell -> full.take(rung("small", 1), cell));
        assertEquals(4, texts.size(), texts::toString);
        assertTrue(texts.get(0).matches("small balloon: Lutra balloon 1.0 \u00d7 15 \\(tight .* mm\\)"), texts.get(0));
        assertEquals("asks for small balloon: Lutra balloon b10", texts.get(1));
        assertEquals("lot A213, use by 2027-02-28, cabinet 2, shelf B", texts.get(2));
        assertEquals("no other can be planned with", texts.get(3));
        assertEquals(List.of(texts.get(0), texts.get(2)),
                texts(cell -> without(Omission.NEEDS, Omission.CHOICES).take(rung("small", 1), cell)));
    }

    @Test
    void aStepThatNeedsNothingSaysSo() {
        Rung small = rung("small", 1);
        Rung bare = new Rung(small.number(), small.move(), 1,
                new MoveAnswer(small.move(), small.equipment().before(),
                        small.equipment().after(), Set.of(), List.of(), List.of()),
                List.of(), small.costs(), small.placement(), small.expected(), small.worst(), small.beyond(),
                small.delivery());
        assertEquals(List.of("nothing"), texts(cell -> full.take(bare, cell)));
    }

    @Test
    void adviceTellsChangesCautionsWhenToGiveUpAndWhatCanBeDelivered() {
        List<String> texts = texts(cell -> full.advice(rung("extension", 0), cell));
        assertEquals("guide extension in: Halden extension 6 Fr", texts.get(0));
        assertEquals("all that follows passes the extension", texts.get(1));
        assertTrue(texts.contains("pressure may be damped: watch it"), texts::toString);
        assertTrue(texts.contains("Give it up: it does not advance without force"), texts::toString);
        assertTrue(texts.get(texts.size() - 1).startsWith("then the device to be delivered "), texts::toString);
        List<String> brief = texts(cell -> without(Omission.CHANGES).advice(rung("extension", 0), cell));
        assertEquals(texts.subList(2, texts.size()), brief);
    }

    @Test
    void whereNobodySaysWhenToGiveUpNothingIsSaid() {
        List<String> texts = texts(cell -> full.advice(rung("small", 1), cell));
        assertFalse(texts.stream().anyMatch(text -> text.startsWith("Give it up")), texts::toString);
        assertFalse(texts.stream().anyMatch(text -> text.startsWith("then the device")), "no set-up");
    }

    @Test
    void ofSeveralCautionsTheFirstStandsForAllInShort() {
        Rung rupture = rung("rupture", 1);
        List<String> all = texts(cell -> full.advice(rupture, cell));
        assertTrue(all.containsAll(List.of("only a small balloon without air; perforation",
                "the balloon can be caught")), all::toString);
        List<String> brief = texts(cell -> without(Omission.CAUTIONS, Omission.REPEATED).advice(rupture, cell));
        assertTrue(brief.stream().anyMatch(text -> text.matches(
                "1 of \\d: only a small balloon without air; perforation")), brief::toString);
        assertFalse(brief.contains("the balloon can be caught"), brief::toString);
    }

    @Test
    void aSingleCautionStandsInFullHoweverShortTheRestIs() {
        Plan many = SamplePlan.planOf(2);
        RungCells cells = new RungCells(many, SamplePlan.words(many.ladder()),
                new Detail(EnumSet.allOf(Omission.class), 1, 1, ALL, ALL));
        Rung last = many.rungs().get(many.rungs().size() - 1);
        List<String> texts = texts(cell -> cells.advice(last, cell));
        assertTrue(texts.contains("mind the wire"), texts::toString);
    }

    /** Two techniques through an extension in place, at whose collar each device may catch. */
    private static Plan throughAnExtension() {
        CaseFile file = SamplePlan.file(Map.of("true-lumen", true));
        CaseFile extended = new CaseFile(file.title(), file.day(),
                file.system().withExtension(new SystemState.PlacedExtension("extension", DeviceMaker.mm(50))),
                file.target(), file.deliver(), file.facts(), file.aim(), file.spent(), List.of());
        return new Planner(SamplePlan.instruments(), SamplePlan.planOf(2).ladder()).plan(extended,
                new Stock(SamplePlan.shelf(40), Map.of()));
    }

    /** Cautions of the fit solver that an earlier step has told need not be told again. */
    @Test
    void repeatedCautionsAreToldOnlyWhereThereIsRoom() {
        Plan many = throughAnExtension();
        PlanWords of = SamplePlan.words(many.ladder());
        Rung first = many.rungs().get(0);
        Rung last = many.rungs().get(1);
        RungCells all = new RungCells(many, of, Detail.full());
        RungCells fewer = new RungCells(many, of, new Detail(EnumSet.of(Omission.REPEATED), ALL, ALL, ALL, ALL));
        List<String> ofFit = of.fits().cautions(last.equipment().roles().get(0).chosen().orElseThrow().suitability());
        assertEquals(1, ofFit.size());
        assertTrue(texts(cell -> all.advice(last, cell)).containsAll(ofFit));
        assertTrue(texts(cell -> fewer.advice(first, cell)).containsAll(ofFit), "the first time it is told");
        List<String> again = texts(cell -> fewer.advice(last, cell));
        assertFalse(again.contains(ofFit.get(0)), again::toString);
        assertTrue(again.contains("mind the wire"), "its own caution is told");
    }

    @Test
    void marksOfALaterTryStandWithTheFirst() {
        Plan many = SamplePlan.longPlan();
        PlanWords of = SamplePlan.words(many.ladder());
        RungCells cells = new RungCells(many, of, Detail.full());
        Rung later = many.rungs().stream().filter(r -> r.attempt() == 2 && !of.rungs().marks(r).isEmpty()).findFirst()
                .orElseThrow();
        List<String> texts = texts(cell -> cells.step(later, cell));
        assertTrue(of.rungs().marks(later).stream().noneMatch(texts::contains), texts::toString);
    }

    @Test
    void inOneLineAStepHasItsNameWhatItTakesAndItsMarks() {
        Column cell = column();
        Column advice = column();
        Rung rupture = rung("rupture", 1);
        full.brief(rupture, cell, advice);
        assertEquals("Balloon burst in the cap on purpose: Lutra balloon 1.0 \u00d7 15", drawn(cell).text());
        assertEquals("raised hazard outside the label: beyond the rated burst pressure", drawn(advice).text());
    }

    @Test
    void stepsAfterThoseToldInFullHaveALineButTriesOfAnEarlierOneKeepTheirRow() {
        Rung small = rung("small", 1);
        RungCells cells = new RungCells(plan, words,
                new Detail(Set.of(), ALL, ALL, small.number(), ALL));
        assertFalse(cells.isBrief(small));
        assertFalse(cells.isBrief(rung("small", 2)));
        Rung later = plan.rungs().stream().filter(r -> r.number() > small.number() && !cells.isAgain(r)).findFirst()
                .orElseThrow();
        assertTrue(cells.isBrief(later));
        assertFalse(full.isBrief(later));
    }

    @Test
    void whatIsShortenedIsWhatMattersLeastFirst() {
        List<Detail> details = Detail.shorterAndShorter(3);
        assertTrue(details.get(0).tells(Omission.WHY));
        for (int i = 1; i <= Omission.values().length; i++) {
            assertEquals(i, details.get(i).without().size());
            assertFalse(details.get(i).tells(Omission.values()[i - 1]));
        }
        Detail last = details.get(details.size() - 1);
        assertEquals(Map.of("lines", 1, "entries", 1, "whole", 1, "rungs", 1), Map.of("lines", last.lines(), "entries",
                last.entries(), "whole", last.whole(), "rungs", last.rungs()));
        assertEquals(List.of(2, 1, 1, 1), details.stream().map(Detail::whole).filter(n -> n < ALL).toList());
        assertEquals(List.of(2, 1), details.stream().map(Detail::rungs).filter(n -> n < ALL).toList());
        assertTrue(last.telling(Omission.LACKS).tells(Omission.LACKS));
        assertFalse(last.telling(Omission.LACKS).tells(Omission.WHY));
        assertFalse(last.hasRoomFor(Omission.NEEDS) || last.hasRoomFor(Omission.CHOICES));
        assertTrue(last.hasRoomFor(Omission.CAUTIONS) && details.get(1).hasRoomFor(Omission.NEEDS));
    }
}
