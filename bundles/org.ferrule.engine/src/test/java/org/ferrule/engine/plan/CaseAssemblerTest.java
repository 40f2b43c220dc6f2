/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import static org.ferrule.engine.plan.PlanDocuments.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.state.SystemState.PlacedExtension;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseAssemblerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 5);
    private static final String WITHOUT_SETUPS = PlanDocuments.TECHNIQUES.replace("'setups':['extension'],", "")
            .replaceAll("(?s)'setups':\\[.*'techniques'", "'techniques'");

    private final CaseAssembler assembler = new CaseAssembler(List.of(new PassageCheck()));
    private final Catalogue catalogue = PlanDocuments.catalogue(PlanDocuments.DEVICES);

    private AssembledCase assembled(String keys, Catalogue devices, String techniques) {
        return assembler.assemble(PlanDocuments.file(keys), devices, PlanDocuments.rules(),
                PlanDocuments.techniques(techniques), PlanDocuments.shelf(PlanDocuments.SHELF), TODAY);
    }

    private AssembledCase assembled(String keys) {
        return assembled(keys, catalogue, PlanDocuments.TECHNIQUES);
    }

    private AssembledCase with(String found, String instead) {
        assertTrue(PlanDocuments.CASE.contains(found), found);
        return assembled(PlanDocuments.CASE.replace(found, instead));
    }

    @Test
    void copiesACase() {
        AssembledCase assembled = assembled(PlanDocuments.CASE);
        assertEquals(List.of(), assembled.problems());
        CaseFile file = assembled.file();
        assertEquals(LocalDate.of(2026, 4, 2), file.day());
        assertEquals("g-6", file.system().guide());
        assertEquals(Map.of("true-lumen", true), file.facts());
        assertEquals(Resource.CONTRAST, file.aim().objective());
        assertEquals(Map.of(Resource.TIME, 90.0, Resource.CONTRAST, 200.0), file.aim().budgets());
        assertTrue(file.aim().tiersFirst() && file.aim().oneNewRiskAStep());
        assertEquals(1, file.aim().sameAxisDiscount());
        assertEquals(Costs.NONE, file.spent());
    }

    /** The guide's tip lies at the ostium, as in charts; only bends on the way count. */
    @Test
    void reachesFromTheOstiumToTheFarEndOfTheLesion() {
        CaseFile file = assembled(PlanDocuments.CASE).file();
        assertEquals(Optional.of(Length.ofMm(52)), file.target().reach());
        assertEquals(Optional.of(Length.ofMm(40)), file.target().lesionStart());
        assertEquals(Optional.of(Length.ofMm(3)), file.target().vessel());
        assertEquals(1, file.target().bends().size());
    }

    @Test
    void takesTheSegmentsDiameterWhereTheLesionHasNoReference() {
        assertEquals(Optional.of(Length.of("3.2", LengthUnit.MILLIMETRE)),
                with(",'reference':'3.0 mm'", "").file().target().vessel());
    }

    @Test
    void reachesIntoABranchOnlyWithADepth() {
        String branch = "'branch':{'at':'30 mm','diameter':'2.0 mm'";
        assertEquals(Optional.empty(), with("'facts'", branch + "},'facts'").file().target().branchReach());
        assertEquals(Optional.of(Length.ofMm(45)),
                with("'facts'", branch + ",'depth':'15 mm'},'facts'").file().target().branchReach());
    }

    /**
     * The easier question, without what cannot be read, is never asked instead; only for steps before which it is drawn
     * back.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            'guide':'g-6'      | 'guide':'g-7'                    | system guide
            'guide':'g-6',     | ``                               | system guide
            'mainWire':'w-14'  | 'mainWire':'w-15'                | system mainWire
            'mainWire':'w-14'  | 'mainWire':'w-14','extension':{'extension':'x-7'} | system/extension extension
            'mainWire':'w-14'  | 'mainWire':'w-14','extension':{'extension':'x-6','protrusion':'8'} \
                | system/extension extension
            'mainWire':'w-14'  | 'mainWire':'w-14','secondWire':'w-15' | system secondWire
            """)
    void letsSomethingUnknownTakeThePlaceOfWhatNoLibraryHas(String found, String instead, String place) {
        assertTrue(assembled(PlanDocuments.CASE, catalogue, WITHOUT_SETUPS).plan().canGoOn());
        AssembledCase assembled = assembled(PlanDocuments.CASE.replace(found, instead), catalogue, WITHOUT_SETUPS);
        assertEquals(List.of("CASE " + place), places(assembled.problems()));
        String standIn = assembled.file().system().devices().stream().filter(id -> id.startsWith("#")).findFirst()
                .orElseThrow();
        assertTrue(assembled.instruments().device(standIn).sections().stream()
                .allMatch(s -> s.from().equals(Length.ZERO)));
        Plan plan = assembled.plan();
        assertEquals(place.endsWith("extension") || place.endsWith("secondWire"), plan.canGoOn());
        assertTrue(plan.rungs().stream().noneMatch(rung -> rung.equipment().drawnBack().isEmpty()));
    }

    @Test
    void plansWhatCanBeRead() {
        assertEquals(List.of("extension", "small"), assembled(PlanDocuments.CASE).plan().rungs().stream()
                .map(rung -> rung.move().id()).toList());
    }

    @Test
    void putsAnExtensionAtTheTipWhereNoOtherPlaceIsStated() {
        assertEquals(Optional.of(new PlacedExtension("x-6", Length.ZERO)),
                with("'guide':'g-6'", "'guide':'g-6','extension':{'extension':'x-6'}").file().system().extension());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            'day':'2026-04-02',              | ``                                 | day
            '2026-04-02'                     | '2026-02-30'                       | day
            'at':'40 mm','length':'12 mm',   | ``                                 | lesion
            'fact':'true-lumen'              | 'fact':'unknown'                   | facts[0] fact
            'holds':true}                    | 'holds':true},{'fact':'true-lumen','holds':false} | facts[1] holds
            'stoppingCost':60,               | ``                                 | aim
            'stoppingCost':60                | 'stoppingCost':-60                 | aim stoppingCost
            'stoppingCost':60                | 'stoppingCost':60,'sameAxisDiscount':1.5 | aim sameAxisDiscount
            'facts'                          | 'deliver':'s-3','facts'            | deliver
            """)
    void tellsWhatCannotBePlannedWith(String found, String instead, String place) {
        List<String> places = places(with(found, instead).problems());
        assertTrue(places.contains("CASE " + place) || places.contains("CASE  " + place), places::toString);
    }

    @Test
    void takesWhatIsStatedBothWaysNotToHold() {
        assertEquals(Map.of("true-lumen", false),
                with("'holds':true}", "'holds':true},{'fact':'true-lumen','holds':false}").file().facts());
    }

    @Test
    void takesTodayForACaseWithoutADay() {
        assertEquals(TODAY, with("'day':'2026-04-02',", "").file().day());
    }

    @Test
    void copiesTheLog() {
        AssembledCase assembled = with("'facts'", "'spent':{'minutes':25},"
                + "'log':[{'move':'small','outcome':'failed','minutes':8,'units':[{'role':'b','item':'small'}]},"
                + "{'move':'other','contrastMl':4,'units':[{'role':'b','item':'large'}]}],'facts'");
        assertEquals(List.of("CASE log[1] move", "CASE log[1] outcome", "CASE log[1]/units[0] item"),
                places(assembled.problems()));
        assertEquals(new Costs(33, 4, 0, 0), assembled.file().used());
        assertEquals(List.of(Outcome.FAILED, Outcome.GIVEN_UP),
                assembled.file().log().stream().map(a -> a.outcome()).toList());
    }

    @Test
    void plansWithNoDeviceWhoseIdTwoLibrariesShare() {
        AssembledCase assembled = assembled(PlanDocuments.CASE, PlanDocuments.catalogue(PlanDocuments.DEVICES,
                "'devices':[{'id':'w-14','kind':'guidewire'}]"), PlanDocuments.TECHNIQUES);
        assertTrue(places(assembled.problems()).contains("CASE  libraries"), assembled.problems()::toString);
        assertEquals(Optional.empty(), assembled.instruments().find("w-14"));
        assertFalse(assembled.plan().canGoOn());
    }

    @Test
    void keepsWhatWasAnsweredWhileDevicesStayTheSame() {
        AssembledCase first = assembled(PlanDocuments.CASE);
        assertSame(first.instruments(), with("'day':'2026-04-02'", "'day':'2026-04-03'").instruments());
        assertNotSame(first.instruments(), with("'mainWire':'w-14'", "'mainWire':'w-15'").instruments());
    }
}
