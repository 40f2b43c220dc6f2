/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.picture.Box;
import org.ferrule.picture.Line;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.page.Detail.Omission;
import org.ferrule.plansheet.words.PlanWords;
import org.junit.jupiter.api.Test;

/** The parts of a plan sheet by themselves, with all and with less detail. */
class SheetPartsTest {
    private static final int ALL = Integer.MAX_VALUE;
    private static final PageStyle STYLE = new PageStyle(1);

    private final Plan plan = SamplePlan.plan();
    private final PlanWords words = SamplePlan.words(plan.ladder());

    private static Detail without(Omission... omissions) {
        return new Detail(EnumSet.copyOf(List.of(omissions)), ALL, ALL, ALL, ALL);
    }

    private static Drawn drawn(Consumer<PictureBuilder> painter) {
        PictureBuilder g = new PictureBuilder();
        painter.accept(g);
        return Drawn.of(g.picture(400, 2000, "part"));
    }

    private static SheetContent content(Plan plan, PaperFormat.Size size) {
        return new SheetContent(new Imprint("A plan", "", "", "2", LocalDate.of(2026, 4, 1)),
                new Basis(new Edition("House rules", "5"), List.of(), List.of()), plan, SamplePlan.words(plan.ladder()),
                new PaperFormat(size, false), Optional.empty(), Optional.empty(), List.of());
    }

    private static List<String> listed(Consumer<Pieces> writer) {
        Pieces pieces = new Pieces(new Column(STYLE, 300, ALL), 1, 300);
        writer.accept(pieces);
        return drawn(g -> pieces.draw(g, 0, 0)).words().stream().map(Drawn.Words::text).toList();
    }

    @Test
    void aListHasItsHeadingOnceAndSaysHowManyMoreThereAre() {
        Detail one = new Detail(EnumSet.of(Omission.LACKS, Omission.REMEDIES), ALL, 1, ALL, ALL);
        List<String> texts = listed(pieces -> new Lists(words, one).leftOut(plan.leftOut(), pieces));
        int more = plan.leftOut().size() - 1;
        assertEquals(List.of("Not in the plan", words.leftOut().name(plan.leftOut().get(0)),
                words.leftOut().why(plan.leftOut().get(0).why()), "and " + more + " more"), texts);
        List<String> all = listed(pieces -> new Lists(words, Detail.full()).leftOut(plan.leftOut(), pieces));
        assertEquals(1, all.stream().filter("Not in the plan"::equals).count());
        assertFalse(all.stream().anyMatch(text -> text.endsWith(" more")), all::toString);
    }

    @Test
    void anEmptyListSaysNoneAndLimitsThatNobodyStatedSayNothing() {
        Lists lists = new Lists(words, Detail.full());
        assertEquals(List.of("Not in the plan", "none"), listed(pieces -> lists.leftOut(List.of(), pieces)));
        assertEquals(List.of(), listed(pieces -> lists.limits(List.of(), pieces)));
        assertEquals(List.of("Limits and scores", "300 mL"), listed(pieces -> lists.limits(List.of("300 mL"), pieces)));
    }

    @Test
    void whatIsLeftOutTellsItsLacksAndRemediesWhereThereIsRoom() {
        List<String> all = listed(pieces -> new Lists(words, Detail.full()).leftOut(plan.leftOut(), pieces));
        assertTrue(all.contains("would help: get laser generator"), all::toString);
        assertTrue(all.stream().anyMatch(text -> text.startsWith("laser generator: no usable")), all::toString);
        List<String> brief = listed(pieces -> new Lists(words, without(Omission.LACKS, Omission.REMEDIES))
                .leftOut(plan.leftOut(), pieces));
        assertFalse(brief.stream().anyMatch(text -> text.startsWith("would help")), brief::toString);
        assertTrue(brief.contains("cannot be done as things stand"), brief::toString);
    }

    @Test
    void whatMustBeAtHandHasItsBoxOrItsLack() {
        List<String> all = listed(pieces -> new Lists(words, Detail.full()).bailOut(plan.bailOut(), pieces));
        assertTrue(all.contains("balloon to stop a leak: ready"), all::toString);
        assertTrue(all.stream().anyMatch(text -> text.contains("lot A213") || text.contains("lot A377")),
                all::toString);
        assertTrue(all.contains("covered stent: not on the shelf"), all::toString);
        List<String> brief = listed(
                pieces -> new Lists(words, without(Omission.LACKS)).bailOut(plan.bailOut(), pieces));
        assertTrue(brief.size() < all.size() && brief.stream().anyMatch(text -> text.contains("lot A")),
                "boxes are told all the same");
    }

    @Test
    void aStopRuleThatIsReachedIsACaution() {
        List<String> texts = listed(pieces -> new Lists(words, Detail.full()).stops(plan.stops(), pieces));
        assertEquals("Stop when", texts.get(0));
        assertEquals("Contrast: stop at the limit of the laboratory", texts.get(1));
        assertTrue(texts.get(2).startsWith("reached with step "), texts::toString);
        assertFalse(texts.contains("to be watched"), "that goes without saying");
    }

    @Test
    void onWhatThePlanRestsIsToldInFullOrThatTriesAreTakenAsIndependent() {
        SheetContent content = content(plan, PaperFormat.Size.A3);
        String full = drawn(g -> new Closing(content, Detail.full(), STYLE, 300).draw(g, 0, 0)).text();
        String brief = drawn(g -> new Closing(content, without(Omission.ASSUMPTIONS), STYLE, 300).draw(g, 0, 0)).text();
        assertTrue(full.contains("Spared is time") && full.contains("taken as independent"), full);
        assertTrue(!brief.contains("Spared is time") && brief.contains("taken as independent"), brief);
        assertTrue(full.contains("Then: Stop, and come back another day"), full);
    }

    @Test
    void theSystemIsDrawnOrToldInWords() {
        Drawn full = drawn(g -> new Situation(plan, words, Detail.full(), STYLE, 300).draw(g, 0, 0));
        assertTrue(full.hasGroup("part:GUIDE"));
        assertFalse(full.text().contains("In place: "), full.text());
        Drawn brief = drawn(g -> new Situation(plan, words, without(Omission.DRAWING), STYLE, 300).draw(g, 0, 0));
        assertFalse(brief.hasGroup("part:GUIDE"));
        assertTrue(brief.text().contains("In place: Halden sheath 6 Fr, Halden guide 6 Fr, Filo wire 300"),
                brief.text());
        assertFalse(full.text().contains("So far"), "nothing was done");
        assertEquals(List.of(), full.overlaps());
    }

    @Test
    void whatWasDoneIsTold() {
        Plan later = new Planner(SamplePlan.instruments(), plan.ladder()).plan(
                SamplePlan.file(Map.of("no-ostial", true))
                        .logging(new Attempt("small", Outcome.FAILED, Costs.NONE, List.of(), "")),
                new Stock(SamplePlan.shelf(4), Map.of()));
        String text = drawn(g -> new Situation(later, words, Detail.full(), STYLE, 300).draw(g, 0, 0)).text();
        assertTrue(text.contains("So far: Small balloon \u2013 failed"), text);
        assertTrue(text.contains("Look first") && text.contains("See where it stops, in two views"), text);
    }

    /** A line across the table above the first step that may pass the limit of a resource, once for each. */
    @Test
    void whereALimitIsPassedALineRunsAcrossTheTable() {
        RungTable table = new RungTable(plan, words, Detail.full(), STYLE, 270);
        Drawn drawn = drawn(g -> table.draw(g, 10, 20));
        Rung first = plan.rungs().stream().filter(r -> r.beyond().contains(Resource.TIME)).findFirst().orElseThrow();
        Drawn.Words passed = drawn.words().stream().filter(w -> w.text().startsWith("limit of time")).findFirst()
                .orElseThrow();
        assertTrue(passed.text().endsWith("passed from here on, if every step is taken"), passed.text());
        assertEquals(1, drawn.words().stream().filter(w -> w.text().startsWith("limit of time")).count());
        double below = top(drawn, first);
        double above = drawn.words().stream().filter(w -> w.group().equals("rung:" + (first.number() - 1)))
                .mapToDouble(w -> w.box().bottomMm()).max().orElseThrow();
        assertTrue(above < passed.box().yMm() && passed.box().bottomMm() <= below + 0.01);
        assertTrue(drawn.marks("").stream().anyMatch(m -> m.element() instanceof Line && m.box().widthMm() == 270
                && m.box().yMm() > above && m.box().yMm() < passed.box().yMm()), "a line above the words");
        assertEquals(20 + table.heightMm(), drawn.marks("").get(drawn.marks("").size() - 1).box().yMm(), 1e-6);
    }

    private static double top(Drawn drawn, Rung rung) {
        return drawn.marks("rung:" + rung.number()).stream().mapToDouble(m -> m.box().yMm()).min().orElseThrow();
    }

    @Test
    void cellsOfAStepStandBelowTheHeadsOfTheirColumns() {
        Drawn drawn = drawn(g -> new RungTable(plan, words, Detail.full(), STYLE, 270).draw(g, 10, 20));
        Rung rung = plan.rungs().stream().filter(r -> r.move().id().equals("rupture")).findFirst().orElseThrow();
        List<Drawn.Words> cells = drawn.words().stream().filter(w -> w.group().equals("rung:" + rung.number()))
                .toList();
        assertEquals(Integer.toString(rung.number()), cells.get(0).text());
        assertEquals(10 + STYLE.padding() + 0.6, cells.get(0).box().xMm(), 1e-6);
        assertEquals(drawn.words("Step").box().xMm(), cells.get(1).box().xMm(), 1e-6);
        double take = drawn.words().stream().filter(w -> w.text().startsWith("Take from the shelf")).findFirst()
                .orElseThrow().box().xMm();
        assertTrue(cells.stream().anyMatch(w -> w.text().startsWith("small balloon: ") && w.box().xMm() > take));
        double advice = drawn.words().stream().filter(w -> w.text().startsWith("Changes and")).findFirst()
                .orElseThrow().box().xMm();
        assertTrue(cells.stream().anyMatch(w -> Math.abs(w.box().xMm() - advice) < 1e-6));
        assertEquals(cells.get(0).box().bottomMm(), cells.get(cells.size() - 1).box().bottomMm(), 0.01,
                "figures stand beside the name");
        Box page = new Box(10, 20, 270, 2000);
        assertEquals(List.of(), drawn.outside(page));
        assertEquals(List.of(), drawn.overlaps());
    }

    @Test
    void shorteningTellsFromWhichStepOn() {
        SheetContent content = content(plan, PaperFormat.Size.A4);
        String brief = Shortened.of(new Detail(Set.of(), ALL, ALL, 2, ALL), content).orElseThrow();
        assertTrue(brief.endsWith("lots, cautions and when to give up, from step 3 on"), brief);
        String few = Shortened.of(new Detail(Set.of(), ALL, ALL, ALL, 2), content).orElseThrow();
        assertTrue(few.endsWith("steps from 3 on"), few);
        String why = Shortened.of(new Detail(EnumSet.of(Omission.WHY, Omission.BARS), ALL, ALL, ALL, ALL), content)
                .orElseThrow();
        assertTrue(why.endsWith("the plan on screen tells all: the bars of the budgets"), "nobody asked why: " + why);
    }

    /** What was left out last comes back first where it has room beside all steps. */
    @Test
    void whatHasRoomInTheEndIsTold() {
        int told = 0;
        for (int count = 10; told == 0 && count <= 20; count++) {
            SheetContent content = content(SamplePlan.planOf(count), PaperFormat.Size.A4);
            int rungs = content.plan().rungs().size();
            Detail fitting = Detail.shorterAndShorter(rungs).stream()
                    .filter(d -> new Layout(content, d, 6 / 6.5).fits()).findFirst().orElseThrow();
            Optional<Omission> last = Arrays.stream(Omission.values())
                    .filter(o -> !fitting.tells(o) && fitting.hasRoomFor(o)
                            && new Layout(content, fitting.telling(o), 6 / 6.5).fits())
                    .reduce((a, b) -> b);
            if (last.isPresent() && fitting.rungs() >= rungs) {
                Picture page = PlanSheet.of(content, OffsetDateTime.parse("2026-04-01T08:00:00Z")).pages()
                        .get(0);
                String text = Drawn.of(page).text();
                assertFalse(text.contains(content.words().phrases().get("omission." + last.get())), text);
                told++;
            }
        }
        assertTrue(told > 0, "some plan is of that kind");
    }
}
