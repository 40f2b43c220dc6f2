/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.Notation;
import org.ferrule.model.check.ModelProblem;
import org.ferrule.model.check.Validation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong in techniques, cases and shelves, and where. */
class PlanValidationTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 2);
    private static final String TECHNIQUE = "sources.0.id=s; facts.0.id=f; facts.0.words=F; setups.0.id=u;"
            + "setups.0.name=U; setups.0.hazard=usual; setups.0.minutes=1; setups.0.source=s;"
            + "setups.0.roles.0.id=r; setups.0.roles.0.kinds=guidewire;"
            + "techniques.0.id=t; techniques.0.name=T; techniques.0.axis=add support; techniques.0.hazard=raised;"
            + "techniques.0.source=s;";
    private static final String TRY = "techniques.0.tries.0.minutes=5; techniques.0.tries.0.prior.successes=1;"
            + "techniques.0.tries.0.prior.failures=1; techniques.0.tries.0.prior.label=assumed;";
    private static final String SECOND = TRY + TRY.replace("tries.0", "tries.1");

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            title=nothing wrong                               | -
            facts.1.id=f; facts.1.words=G                     | DUPLICATE_ID facts.1.id
            facts.1.id=g                                      | MISSING_VALUE facts.1.words
            setups.0.id=t                                     | DUPLICATE_ID techniques.0.id
            setups.0.id=u#1                                   | UNUSABLE_ID setups.0.id
            techniques.0.roles.0.id=r; techniques.0.roles.0.kinds=snare | -
            techniques.0.roles.0.id=r; techniques.0.roles.0.kinds=snare; \
                techniques.0.roles.1.id=r; techniques.0.roles.1.kinds=snare | DUPLICATE_ID techniques.0.roles.1.id
            stopRules.0.id=x; stopRules.0.words=w; stopRules.0.source=s; \
                stopRules.1.id=x; stopRules.1.words=w; stopRules.1.source=s | DUPLICATE_ID stopRules.1.id
            techniques.0.needs.0.fact=f                       | -
            techniques.0.needs.0.fact=g                       | UNKNOWN_REFERENCE techniques.0.needs.0.fact
            techniques.0.setups=u                             | -
            techniques.0.setups=u; techniques.0.setups=v      | UNKNOWN_REFERENCE techniques.0.setups[1]
            techniques.0.setups=t                             | UNKNOWN_REFERENCE techniques.0.setups[0]
            techniques.0.after=u                              | UNKNOWN_REFERENCE techniques.0.after[0]
            techniques.0.after=t                              | CIRCULAR_REFERENCE techniques.0.after
            setups.0.setups=u                                 | CIRCULAR_REFERENCE setups.0.setups
            setups.0.leaves.0.slot=main wire; setups.0.leaves.0.role=r | -
            setups.0.leaves.0.slot=main wire; setups.0.leaves.0.role=q | UNKNOWN_REFERENCE setups.0.leaves.0.role
            setups.0.leaves.0.slot=extension; setups.0.leaves.0.role=r | \
                MISSING_PROTRUSION setups.0.leaves.0.protrusion
            setups.0.leaves.0.slot=anchor; setups.0.leaves.0.role=r; setups.0.leaves.0.protrusion=8 cm | \
                CONDITIONS_EXCLUDE setups.0.leaves.0.protrusion
            setups.0.roles.0.equipment=console                | DEVICE_AND_EQUIPMENT setups.0.roles.0.equipment
            setups.0.roles.1.id=q                             | ROLE_WITHOUT_DEVICE setups.0.roles.1.kinds
            setups.0.roles.1.id=q; setups.0.roles.1.equipment=console | -
            setups.0.roles.0.count=0                          | OUT_OF_RANGE setups.0.roles.0.count
            setups.0.roles.0.toVesselFrom=0                   | OUT_OF_RANGE setups.0.roles.0.toVesselFrom
            setups.0.roles.0.toVesselFrom=1.2; setups.0.roles.0.toVesselTo=0.9 | \
                BAND_OUT_OF_ORDER setups.0.roles.0.toVesselTo
            setups.0.roles.0.wire=0.014                       | UNREADABLE_FIGURE setups.0.roles.0.wire
            setups.0.roles.0.wire=0.014 mm                    | DOUBTFUL_FIGURE setups.0.roles.0.wire
            techniques.0.needs.0=                             | EMPTY_NEED techniques.0.needs.0
            techniques.0.needs.0.vessel=2 mm min              | -
            techniques.0.needs.0.vessel=2 mm min; techniques.0.needs.0.fact=f | \
                CONDITIONS_EXCLUDE techniques.0.needs.0.vessel
            setups.0.minutes=-1                               | OUT_OF_RANGE setups.0.minutes
            setups.1.id=v; setups.1.name=V; setups.1.hazard=high; setups.1.source=s | NO_COSTS setups.1
            techniques.0.offLabel=                            | OFF_LABEL_WITHOUT_REASON techniques.0.offLabel
            techniques.0.offLabel=above the rated pressure    | -
            techniques.0.source=x                             | UNKNOWN_REFERENCE techniques.0.source
            techniques.1.id=v; techniques.1.name=V; techniques.1.axis=look first; techniques.1.hazard=usual | \
                MISSING_SOURCE techniques.1
            techniques.0.published.0.text=31 of 40            | MISSING_SOURCE techniques.0.published.0
            techniques.0.published.0.text=31 of 40; techniques.0.published.0.source=s | -
            stopRules.0.id=x; stopRules.0.words=w             | MISSING_SOURCE stopRules.0
            stopRules.0.id=x; stopRules.0.words=w; stopRules.0.source=s; stopRules.0.resource=dose | \
                LIMIT_WITHOUT_RESOURCE stopRules.0.limit
            stopRules.0.id=x; stopRules.0.words=w; stopRules.0.source=s; stopRules.0.limit=300 | \
                LIMIT_WITHOUT_RESOURCE stopRules.0.resource
            stopRules.0.id=x; stopRules.0.words=w; stopRules.0.source=s; stopRules.0.limit=300; \
                stopRules.0.resource=contrast | -
            """)
    void checksTechniques(String notation, String expected) {
        assertProblems(expected, DocumentKind.TECHNIQUES, TECHNIQUE + notation);
    }

    @Test
    void tellsOfACircleAtEachOfItsMembers() {
        assertProblems("CIRCULAR_REFERENCE setups.0.setups, CIRCULAR_REFERENCE setups.1.setups",
                DocumentKind.TECHNIQUES, TECHNIQUE + "setups.0.setups=v; setups.1.id=v; setups.1.name=V;"
                        + "setups.1.hazard=usual; setups.1.money=0; setups.1.source=s; setups.1.setups=u");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            techniques.0.tries.0.successes=0                  | -
            techniques.0.tries.0.prior.label=                 | PRIOR_WITHOUT_LABEL techniques.0.tries.0.prior.label
            techniques.0.tries.1.prior.failures=0             | \
                OUT_OF_RANGE techniques.0.tries.1.prior.failures, CHANCE_RISES techniques.0.tries.1.successes
            techniques.0.tries.0.failures=-1                  | OUT_OF_RANGE techniques.0.tries.0.failures
            techniques.0.tries.1.successes=1                  | CHANCE_RISES techniques.0.tries.1.successes
            techniques.0.tries.0.successes=3; techniques.0.tries.1.successes=1 | -
            techniques.0.tries.0.successes=1; techniques.0.tries.0.failures=1; techniques.0.tries.1.successes=2; \
                techniques.0.tries.1.failures=2 | -
            techniques.0.tries.2.minutes=5                    | MISSING_VALUE techniques.0.tries.2.prior
            """)
    void checksTries(String notation, String expected) {
        assertProblems(expected, DocumentKind.TECHNIQUES, TECHNIQUE + SECOND + notation);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            title=Calcified bend                              | -
            rules=r.json                                      | BAD_PATH rules
            shelf=s.json                                      | BAD_PATH shelf
            day=2 April                                       | BAD_DATE day
            facts.0.fact=f; facts.0.holds=false               | -
            facts.0.fact=f                                    | MISSING_VALUE facts.0.holds
            facts.0.fact=f; facts.0.holds=true; facts.1.fact=f; facts.1.holds=true | STATED_TWICE facts.1.fact
            path.segments.0.length=50 mm; lesion.at=20 mm; lesion.length=31 mm | LESION_BEYOND_PATH lesion.at
            aim.sameAxisDiscount=1.2                          | OUT_OF_RANGE aim.sameAxisDiscount
            aim.budgets.minutes=-1                            | OUT_OF_RANGE aim.budgets.minutes
            log.0.move=t                                      | MISSING_VALUE log.0.outcome
            log.0.move=t; log.0.outcome=failed; log.0.units.0.role=r | MISSING_VALUE log.0.units.0.item
            system.extension.protrusion=8 cm                  | MISSING_VALUE system.extension.extension
            measures.bendDegrees=181                          | OUT_OF_RANGE measures.bendDegrees
            patient.age=71; patient.weight=80 kg; patient.creatinine=1.5 mg/dL; patient.sex=male | -
            patient.weight=176 lb; patient.creatinine=133 umol/L | -
            patient.creatinine=133 µmol/l                     | -
            patient.creatinine=133 mg/dL                      | IMPLAUSIBLE_PATIENT patient.creatinine
            patient.creatinine=1.5 umol/L                     | IMPLAUSIBLE_PATIENT patient.creatinine
            patient.creatinine=1.5                            | IMPLAUSIBLE_PATIENT patient.creatinine
            patient.weight=8 kg                               | IMPLAUSIBLE_PATIENT patient.weight
            patient.weight=80                                 | IMPLAUSIBLE_PATIENT patient.weight
            patient.age=17                                    | IMPLAUSIBLE_PATIENT patient.age
            patient.age=111                                   | IMPLAUSIBLE_PATIENT patient.age
            closing.ended=stopped                             | MISSING_VALUE closing.closed
            title=Mrs Example                                 | PERSONAL_TEXT title
            lesion.name=Mr. Anybody's branch                  | PERSONAL_TEXT lesion.name
            path.segments.0.name=No 12345678                  | PERSONAL_TEXT path.segments.0.name
            access.site=right radial, born 1950               | PERSONAL_TEXT access.site
            log.0.move=t; log.0.outcome=failed; log.0.remark=see 04.05.1950 | PERSONAL_TEXT log.0.remark
            extras.0.key=dob; extras.0.json="1950"            | PERSONAL_TEXT extras.0.key
            extras.0.key=other; extras.0.json="1950-05-04"    | PERSONAL_TEXT extras.0.json
            """)
    void checksCases(String notation, String expected) {
        assertProblems(expected, DocumentKind.CASE, "libraries=a.devices.json; rules=r.rules.json;"
                + "techniques=t.techniques.json; system.guide=g; aim.stoppingCost=60;" + notation);
    }

    @Test
    void requiresWhatACaseCannotDoWithout() {
        assertProblems("MISSING_VALUE libraries, MISSING_VALUE rules, MISSING_VALUE techniques, MISSING_VALUE system, "
                + "MISSING_VALUE aim", DocumentKind.CASE, "");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            items.0.code=20123456789013                       | BAD_CODE items.0.code
            items.0.code=2012345                              | BAD_CODE items.0.code
            items.0.id=                                       | UNUSABLE_ID items.0.id
            items.1.id=i; items.1.equipment=console           | DUPLICATE_ID items.1.id
            items.1.id=j                                      | ITEM_WITHOUT_DEVICE items.1
            items.0.equipment=console                         | DEVICE_AND_EQUIPMENT items.0.equipment
            items.0.parLevel=-1                               | OUT_OF_RANGE items.0.parLevel
            items.0.price=-1.50                               | OUT_OF_RANGE items.0.price
            items.0.lots.0.quantity=0                         | OUT_OF_RANGE items.0.lots.0.quantity
            items.0.lots.0.quantity=-2                        | OUT_OF_RANGE items.0.lots.0.quantity
            items.0.lots.0.expiry=2026-04-02                  | -
            items.0.lots.0.expiry=2026-04-01                  | EXPIRED items.0.lots.0.expiry
            items.0.lots.0.expiry=2026-04                     | BAD_DATE items.0.lots.0.expiry
            items.0.lots.0.serial=7; items.0.lots.0.quantity=1 | -
            items.0.lots.0.serial=7; items.0.lots.0.quantity=2 | SERIAL_OF_SEVERAL items.0.lots.0.quantity
            items.0.lots.0.lot=A; items.0.lots.1.lot=A        | DUPLICATE_LOT items.0.lots.1
            items.0.lots.0.lot=A; items.0.lots.1.lot=A; items.0.lots.1.location=B | -
            items.0.lots.0.lot=A; items.0.lots.1.lot=A; items.0.lots.1.location=B; \
                items.0.lots.1.expiry=2027-01-31 | LOT_WITH_TWO_DATES items.0.lots.1.expiry
            """)
    void checksShelves(String notation, String expected) {
        assertProblems(expected, DocumentKind.SHELF, "items.0.id=i; items.0.device=d;" + notation);
    }

    /** Check digits as published: the calculator of gs1.org gives 3 for 629104150021. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            6291041500213,    -
            06291041500213,   -
            6291041500214,    BAD_CODE items.0.code
            40987650000223,   -
            40987650000224,   BAD_CODE items.0.code
            """)
    void knowsCheckDigits(String code, String expected) {
        assertProblems(expected, DocumentKind.SHELF, "items.0.id=i; items.0.device=d; items.0.code=" + code);
    }

    @Test
    void tellsOneDeviceIdentifierWithAndWithoutZerosInFront() {
        assertProblems("DUPLICATE_CODE items.1.code", DocumentKind.SHELF, "items.0.id=i; items.0.device=d;"
                + "items.0.code=6291041500213; items.1.id=j; items.1.device=e; items.1.code=06291041500213");
    }

    private static void assertProblems(String expected, DocumentKind kind, String notation) {
        Document document = Notation.set(kind.create(), notation);
        List<ModelProblem> problems = new Validation(TODAY).check(document);
        assertEquals(expected == null ? "" : expected, problems.stream().map(p -> p.code() + " "
                + Notation.path(document, p.subject(), p.feature()) + (p.index() < 0 ? "" : "[" + p.index() + "]"))
                .collect(Collectors.joining(", ")));
    }
}
