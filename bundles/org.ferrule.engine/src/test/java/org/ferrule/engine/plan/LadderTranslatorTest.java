/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import static org.ferrule.engine.plan.PlanDocuments.places;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.engine.plan.LadderTranslator.TranslatedLadder;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LadderTranslatorTest {

    private static TranslatedLadder ladder(String keys) {
        return LadderTranslator.translate(PlanDocuments.techniques(keys),
                PlanDocuments.catalogue(PlanDocuments.DEVICES));
    }

    private static TranslatedLadder with(String found, String instead) {
        assertTrue(PlanDocuments.TECHNIQUES.contains(found), found);
        return ladder(PlanDocuments.TECHNIQUES.replace(found, instead));
    }

    @Test
    void copiesATechnique() {
        TranslatedLadder translated = ladder(PlanDocuments.TECHNIQUES);
        assertEquals(List.of(), translated.problems());
        assertEquals("3", translated.ladder().revision());
        Technique small = translated.ladder().technique("small");
        assertEquals(Axis.PROFILE, small.axis());
        assertEquals(Hazard.USUAL, small.hazard());
        assertEquals(Set.of("extension"), small.setups());
        assertEquals(new Costs(5, 8, 0, 0), small.tries().get(0).costs());
        assertEquals(4.0 / 6, small.tries().get(0).chance().mean(), 1e-12);
        assertEquals("Practice", small.advice().source().title());
        Role role = small.roles().get(0);
        assertEquals(Set.of(DeviceKind.BALLOON_CATHETER), role.selection().kinds());
        assertEquals(new LengthRange(Optional.of(Length.ofMm(1)), Optional.of(Length.ofMm(1.5))),
                role.selection().nominalDiameter());
    }

    @Test
    void keepsAnEndOfARangeOpen() {
        Technique small = ladder(PlanDocuments.TECHNIQUES).ladder().technique("small");
        assertEquals(new Need.Vessel(new LengthRange(Optional.of(Length.ofMm(2)), Optional.empty())),
                small.needs().get(1));
    }

    @Test
    void copiesWhatASetUpLeaves() {
        assertEquals(List.of(new Placement(Slot.EXTENSION, "x", Optional.of(Length.ofMm(80)))),
                ladder(PlanDocuments.TECHNIQUES).ladder().setup("extension").placements());
    }

    /** Whatever cannot be read, no case can state what the technique or the set-up then needs. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {'fact':'true-lumen'}      | {'fact':'unknown'}        | small     | techniques[small]/needs[0] fact
            {'vessel':'2.0 mm min'}    | {'vessel':'2.0'}          | small     | techniques[small]/needs[1] vessel
            {'vessel':'2.0 mm min'}    | {}                        | small     | techniques[small]/needs[1] fact
            'setups':['extension']     | 'setups':['unknown']      | small     | techniques[small] setups
            'setups':['extension']     | 'after':['unknown']       | small     | techniques[small] after
            'axis':'lower the profile',|                           | small     | techniques[small] axis
            'label':'assumed'          | 'label':' '               | small     | techniques[small]/tries[0] prior
            'failures':1,'label'       | 'failures':0,'label'      | small     | techniques[small]/tries[0] prior
            'hazard':'raised',         |                           | extension | setups[extension] hazard
            'role':'x','protrusion'    | 'role':'y','protrusion'   | extension | setups[extension]/leaves[0] role
            ,'protrusion':'8 cm'       |                           | extension | setups[extension]/leaves[0] protrusion
            """)
    void neverPlansWithWhatCannotBeRead(String found, String instead, String move, String place) {
        TranslatedLadder translated = with(found, instead == null ? "" : instead);
        assertTrue(places(translated.problems()).contains("TECHNIQUES " + place), translated.problems()::toString);
        List<Need> needs = move.equals("small") ? translated.ladder().technique(move).needs()
                : translated.ladder().setup(move).needs();
        assertTrue(needs.stream().anyMatch(n -> n instanceof Need.Fact fact && fact.fact().startsWith("#")));
    }

    /** A role that cannot be read is not a role that anything can play. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            'name':'balloon','kinds':['balloon catheter'] | 'name':'n'
            'kinds':['balloon catheter'] | 'kinds':['balloon catheter'],'equipment':'console'
            '1.0..1.5 mm'                | '1.0..1.5'
            '1.0..1.5 mm'                | '1.0..1.5 mm','count':0
            '1.0..1.5 mm'                | '1.0..1.5 mm','toVesselFrom':1.2,'toVesselTo':0.9
            """)
    void letsNothingPlayARoleThatCannotBeRead(String found, String instead) {
        TranslatedLadder translated = with(found, instead);
        assertEquals(1, translated.problems().size(), translated.problems()::toString);
        assertTrue(translated.problems().get(0).path().startsWith("techniques[small]/roles[b]"));
        assertEquals(Set.of("#"), translated.ladder().technique("small").roles().get(0).selection().devices());
    }

    @Test
    void namesADeviceThatNoLibraryHas() {
        TranslatedLadder translated = with("'kinds':['balloon catheter']", "'devices':['b-15','b-16']");
        assertEquals(List.of("TECHNIQUES techniques[small]/roles[b] devices"), places(translated.problems()));
        assertEquals(Set.of("b-15", "b-16"),
                translated.ladder().technique("small").roles().get(0).selection().devices());
    }

    @Test
    void leavesOutASecondOfTheSameName() {
        TranslatedLadder translated = with("'id':'small'", "'id':'extension'");
        assertEquals(List.of("TECHNIQUES techniques[extension] id"), places(translated.problems()));
        assertEquals(List.of(), translated.ladder().techniques());
    }

    @Test
    void letsAPersonWatchARuleWithoutALimit() {
        TranslatedLadder translated = ladder(
                "'stopRules':[{'id':'a','words':'w','resource':'dose','limit':5000},"
                        + "{'id':'b','words':'w','resource':'dose'},{'id':'c','words':'w'}]");
        assertEquals(List.of("TECHNIQUES stopRules[b] limit"), places(translated.problems()));
        assertEquals(List.of(Optional.of(Resource.DOSE), Optional.empty(), Optional.empty()),
                translated.ladder().stopRules().stream().map(r -> r.resource()).toList());
    }
}
