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
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.picture.Document;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.why.OrderReasons;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanSheetTest {
    private static final OffsetDateTime CREATED = OffsetDateTime.of(2026, 4, 1, 8, 0, 0, 0, ZoneOffset.UTC);
    private static final double MARGIN_MM = 8.9;

    private static Picture page(Plan plan, PaperFormat.Size size, String title) {
        return page(content(plan, size, title, List.of()));
    }

    private static SheetContent content(Plan plan, PaperFormat.Size size, String title, List<String> limits) {
        return new SheetContent(
                new Imprint(title, "", "A. Educator", "2", LocalDate.of(2026, 4, 1)),
                new Basis(new Edition("House rules", "5"), List.of(new Edition("Devices", "1")), List.of("Shelf: 7")),
                plan, SamplePlan.words(plan.ladder()), new PaperFormat(size, false),
                Optional.empty(), Optional.empty(), limits);
    }

    private static Picture page(SheetContent content) {
        Document sheet = PlanSheet.of(content, CREATED);
        assertEquals(1, sheet.pages().size());
        return sheet.pages().get(0);
    }

    private static Picture page(Plan plan) {
        return page(plan, PaperFormat.Size.A4, "Balloon stops at the cap");
    }

    private static void assertLegible(Picture page) {
        Drawn drawn = Drawn.of(page);
        assertEquals(List.of(), drawn.overlaps());
        assertEquals(List.of(), drawn.outside(page.paper().inset(MARGIN_MM)));
        drawn.forEachLine(line -> assertTrue(line.sizePt() >= 6 - 1e-9, line::text));
    }

    @ParameterizedTest
    @EnumSource(names = { "A4", "LETTER", "A3" })
    void everyLineStandsOnThePaperApartFromTheOthersAndIsLargeEnoughToRead(PaperFormat.Size size) {
        assertLegible(page(SamplePlan.plan(), size, "Balloon stops at the cap"));
        assertLegible(page(SamplePlan.longPlan(), size, "A long ladder, ".repeat(20)));
    }

    @Test
    void aPlanOfShortStepsIsToldToTheLastOfTwenty() {
        Plan plan = SamplePlan.planOf(20);
        assertTrue(plan.rungs().size() >= 20, () -> plan.rungs().size() + " steps");
        Picture page = page(plan);
        assertLegible(page);
        Drawn drawn = Drawn.of(page);
        plan.rungs().forEach(rung -> assertTrue(drawn.hasGroup("rung:" + rung.number()), () -> "" + rung.number()));
    }

    @Test
    void whateverIsNotToldIsSaidToBeLeftOut() {
        List<Boolean> shortened = new ArrayList<>();
        IntStream.of(1, 4, 8, 16, 30).forEach(count -> {
            Plan plan = SamplePlan.planOf(count);
            Picture page = page(plan);
            assertLegible(page);
            String text = Drawn.of(page).text();
            boolean all = plan.rungs().stream().allMatch(r -> Drawn.of(page).hasGroup("rung:" + r.number()));
            assertEquals(!all, text.contains("steps from "), text);
            shortened.add(text.contains("Shortened to fit"));
        });
        assertFalse(shortened.get(0));
        assertTrue(shortened.get(shortened.size() - 1));
    }

    /** Where nothing has to be shortened, the system is drawn, and what is not in the plan is told. */
    @Test
    void systemAndWhatIsLeftOutStandOnTheSheet() {
        assertTrue(Drawn.of(page(SamplePlan.planOf(1))).hasGroup("part:GUIDE"));
        Plan plan = SamplePlan.plan();
        String text = Drawn.of(page(plan)).text();
        assertTrue(text.contains("Not in the plan"), text);
        assertTrue(text.contains(plan.leftOut().get(0).move().name()), text);
    }

    @Test
    void shorteningIsSaidInOneSentence() {
        SheetContent content = content(SamplePlan.plan(), PaperFormat.Size.A4, "A plan", List.of());
        assertEquals(Optional.empty(), Shortened.of(Detail.full(), content));
        int all = Integer.MAX_VALUE;
        String one = Shortened.of(new Detail(Set.of(), 1, 1, all, all), content).orElseThrow();
        assertTrue(one.contains("texts longer than a line; techniques not in the plan after the first"), one);
        String more = Shortened.of(new Detail(Set.of(), 2, 3, all, all), content).orElseThrow();
        assertTrue(more.contains("texts longer than 2 lines; techniques not in the plan after the first 3"), more);
    }

    @Test
    void theWireComesFirst() {
        Drawn drawn = Drawn.of(page(SamplePlan.plan()));
        String wire = drawn.text("wire");
        assertTrue(wire.startsWith("FIRST: See the wire in the distal true lumen, in two orthogonal views"), wire);
        double bottom = drawn.words().stream().filter(w -> w.group().equals("wire"))
                .mapToDouble(w -> w.box().bottomMm()).max().orElseThrow();
        drawn.words().stream().filter(w -> w.group().startsWith("rung:"))
                .forEach(w -> assertTrue(w.box().yMm() > bottom, w::text));
    }

    @Test
    void theHeadOfAClosedCaseSaysSoAndHasNothingToTick() {
        SheetContent open = content(SamplePlan.plan(), PaperFormat.Size.A4, "Over", List.of());
        Drawn drawn = Drawn.of(page(new SheetContent(open.imprint(), open.basis(), open.plan(), open.words(),
                open.paper(), open.reasons(), Optional.of("Closed on 2026-04-02: stopped."), open.limits())));
        assertTrue(drawn.text("closed").startsWith("Closed on 2026-04-02: stopped."), drawn.text("closed"));
        assertTrue(drawn.words().stream().noneMatch(word -> word.group().equals("wire")), "no wire to look at first");
    }

    @Test
    void whatIsToBeTakenStandsThereInFull() {
        Plan plan = SamplePlan.longPlan();
        String text = Drawn.of(page(plan)).text();
        assertTrue(text.contains("lot A213, use by 2027-02-28, cabinet 2, shelf B"), text);
    }

    @Test
    void theSheetCarriesEditionSourcesAndCaution() {
        String text = Drawn.of(page(SamplePlan.plan())).text();
        List.of("rev. 2", "House rules, rev. 5", "for 2026-04-02", "Balloon does not cross, rev. 3", "Common practice",
                "The instructions for use of every device", "is no clinical decision")
                .forEach(part -> assertTrue(text.contains(part), () -> part + " in " + text));
    }

    @Test
    void aPlanWithoutStepsSaysSo() {
        Plan plan = SamplePlan.plan(Map.of("true-lumen", false));
        String text = Drawn.of(page(plan)).text();
        assertTrue(text.contains("stated not to be so: nothing is planned"), text);
        assertTrue(text.contains("Nothing is planned as long as the wire is not seen"), text);
        assertFalse(text.contains("Not in the plan"), text);
    }

    @Test
    void whatTheOrderHangsOnStandsThereInShortWhereSomebodyAsked() {
        Plan plan = SamplePlan.planOf(3);
        SheetContent content = content(plan, PaperFormat.Size.A3, "Three", List.of());
        assertFalse(Drawn.of(page(content)).text().contains("Why this order"));
        Picture page = page(content.with(OrderReasons.of(plan)));
        assertLegible(page);
        assertTrue(Drawn.of(page).text().contains("It changes first with"), Drawn.of(page).text());
    }

    @Test
    void limitsStandThereHoweverLongTheLadderIs() {
        Picture page = page(content(SamplePlan.longPlan(), PaperFormat.Size.A4, "Long",
                List.of("Contrast medium: 300 mL by one source, 222 mL by another")));
        assertLegible(page);
        assertTrue(Drawn.of(page).text().contains("222 mL by another"), Drawn.of(page).text());
    }

    @Test
    void theChanceOfTheWholePlanStandsNowhere() {
        Plan plan = SamplePlan.plan();
        String chance = String.format(java.util.Locale.ROOT, "%.2f", plan.order().successChance());
        assertFalse(Drawn.of(page(plan)).text().contains(chance));
    }
}
