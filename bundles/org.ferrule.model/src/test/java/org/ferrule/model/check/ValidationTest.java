/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.FitChart;
import org.ferrule.model.Notation;
import org.ferrule.model.RuleSet;
import org.ferrule.model.check.ModelProblem.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** One case a line: what is set beyond a good document, and the problems that it gives. */
class ValidationTest {

    private static final String GOOD_RULES = "clearances.0.required=0.1 mm; clearances.0.source=s; confidence=0.95;"
            + "spans.0.figure=inner diameter; spans.0.below=0.02 mm; spans.0.above=0.02 mm; spans.0.source=s;"
            + "spans.1.figure=outer diameter; spans.1.below=0.02 mm; spans.1.above=0.02 mm; spans.1.source=s;"
            + "spans.2.figure=crossing profile; spans.2.below=0 mm; spans.2.above=0.1 mm; spans.2.source=s;"
            + "spans.3.figure=wire diameter; spans.3.below=0.01 mm; spans.3.above=0.01 mm; spans.3.source=s";

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            sources.1.id=t                                       | -
            sources.1.id=s                                       | DUPLICATE_ID sources.1.id
            sources.1=                                           | MISSING_VALUE sources.1.id
            devices.0.id=a; devices.1.id=a                       | DUPLICATE_ID devices.1.id
            devices.0.id=a; lines.0.id=a                         | -
            lines.0.id=a; lines.1.id=a                           | DUPLICATE_ID lines.1.id
            devices.0.id=a#b                                     | UNUSABLE_ID devices.0.id
            devices.0.id=a!b                                     | UNUSABLE_ID devices.0.id
            devices.0.id=                                        | UNUSABLE_ID devices.0.id
            devices.0=                                           | MISSING_VALUE devices.0.id
            devices.0.id=a; devices.0.source=x                   | UNKNOWN_REFERENCE devices.0.source
            devices.0.id=a; devices.0.line=x                     | UNKNOWN_REFERENCE devices.0.line
            devices.0.id=a; devices.0.line=b; lines.0.id=b       | -
            devices.0.id=a; devices.0.claims.0=                  | MISSING_VALUE devices.0.claims.0.type
            devices.0.id=a; devices.0.cutter.diameter=2 mm; devices.0.source=s | MISSING_VALUE devices.0.cutter.type
            devices.0.id=a; devices.0.takesWire=0.014 in         | MISSING_SOURCE devices.0
            bench.0.outer=a; bench.0.inner=b; bench.0.result=passed; bench.0.source=s; devices.0.id=a; \
                devices.1.id=b | -
            bench.0.outer=a; bench.0.inner=b; bench.0.result=passed; bench.0.source=s; devices.0.id=a | -
            bench.0.outer=a; bench.0.inner=a; bench.0.result=passed; devices.0.id=a | MISSING_SOURCE bench.0
            bench.0.outer=a; bench.0.inner=a; bench.0.result=passed; bench.0.source=s; devices.0.id=a; \
                bench.0.lumen=x | UNKNOWN_REFERENCE bench.0.lumen
            bench.0.outer=a; bench.0.inner=a; bench.0.result=passed; bench.0.source=s; devices.0.id=a; \
                bench.0.samples=0 | OUT_OF_RANGE bench.0.samples
            date=2026-02-28                                      | -
            date=2026-02-30                                      | BAD_DATE date
            date=1.3.2026                                        | BAD_DATE date
            date=2026-03                                         | BAD_DATE date
            sources.0.date=2026-03                               | -
            sources.0.date=2026                                  | -
            sources.0.date=March 2026                            | BAD_DATE sources.0.date
            sources.0.reviewed=2026                              | BAD_DATE sources.0.reviewed
            """)
    void checksLibraries(String notation, String expected) {
        assertProblems(expected, Notation.set(DocumentKind.DEVICES.create(), "sources.0.id=s;" + notation));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            sections.0.from=0 mm; sections.0.to=100 cm                            | -
            sections.0.from=0 mm; sections.0.to=1000 mm                           | -
            sections.0.from=0 mm; sections.0.to=9 mm; sections.1.from=10 mm; sections.1.to=1 m | GAP sections.1.from
            sections.0.from=0 mm; sections.0.to=11 mm; sections.1.from=10 mm; sections.1.to=1 m | \
                OVERLAP sections.1.from
            sections.0.from=10 mm; sections.0.to=1 m; sections.1.from=0 mm; sections.1.to=10 mm | -
            sections.0.from=5 mm; sections.0.to=100 cm                            | GAP sections.0.from
            sections.0.from=0 mm; sections.0.to=90 cm                             | GAP sections.0.to
            sections.0.from=0 mm; sections.0.to=90 cm; sections.1.od=6 Fr         | -
            sections.0.from=0 mm; sections.0.to=101 cm                            | \
                BEYOND_EFFECTIVE_LENGTH sections.0.to
            sections.0.from=100 cm; sections.0.to=0 mm; sections.1.od=6 Fr        | REVERSED_STATIONS sections.0.to
            sections.0.name=a; sections.1.name=a                                  | DUPLICATE_NAME sections.1.name
            sections.0.od=1 mm; sections.1.od=1 mm                                | -
            sections.0.od=1 mm; sections.0.oval.width=1 mm; sections.0.oval.height=0.5 mm | \
                SEVERAL_CROSS_SECTIONS sections.0.oval
            sections.0.od=1 mm; sections.0.discs.0.x=0 mm; sections.0.discs.0.y=-0.1 mm; \
                sections.0.discs.0.diameter=1 mm | SEVERAL_CROSS_SECTIONS sections.0.discs
            lumens.0.proximalAt=250 mm; lumens.0.opens=side port                  | -
            lumens.0.proximalAt=1250 mm; lumens.0.opens=side port                 | \
                OPENING_BEYOND_LENGTH lumens.0.proximalAt
            lumens.0.distalAt=1250 mm; lumens.0.proximalAt=10 mm                  | \
                OPENING_BEYOND_LENGTH lumens.0.distalAt, REVERSED_STATIONS lumens.0.proximalAt
            lumens.0.name=a; lumens.1.name=a                                      | DUPLICATE_NAME lumens.1.name
            lumens.0.sections.0.id=0.07 in                                        | -
            lumens.0.sections.0.from=0 mm; lumens.0.sections.0.to=101 cm          | \
                LUMEN_TOO_LONG lumens.0.sections.0.to
            lumens.0.proximalAt=25 cm; lumens.0.sections.0.to=26 cm               | \
                LUMEN_TOO_LONG lumens.0.sections.0.to
            lumens.0.sections.0.from=101 cm                                       | \
                LUMEN_TOO_LONG lumens.0.sections.0.from, GAP lumens.0.sections.0.from
            lumens.0.sections.0.from=9 cm; lumens.0.sections.0.to=8 cm; lumens.0.sections.1.id=1 mm; \
                lumens.0.sections.1.from=half way | \
                UNREADABLE_FIGURE lumens.0.sections.1.from, REVERSED_STATIONS lumens.0.sections.0.to
            lumens.0.sections.0.from=1 cm                                         | GAP lumens.0.sections.0.from
            lumens.0.sections.0.to=99 cm                                          | GAP lumens.0.sections.0.to
            lumens.0.sections.0.to=8 cm; lumens.0.sections.1.from=9 cm            | GAP lumens.0.sections.1.from
            lumens.0.sections.0.to=8 cm; lumens.0.sections.1.from=7 cm            | OVERLAP lumens.0.sections.1.from
            lumens.0.sections.0.to=8 cm; lumens.0.sections.1.from=8 cm            | -
            lumens.0.sections.0.name=a; lumens.0.sections.0.to=1 cm; lumens.0.sections.1.name=a; \
                lumens.0.sections.1.from=1 cm | DUPLICATE_NAME lumens.0.sections.1.name
            """)
    void checksGeometry(String notation, String expected) {
        assertDeviceProblems(expected, notation);
    }

    /** A wall needs room: lumen and shaft as printed, in any units. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            0.070 in    | od=6 Fr                          | -
            2 mm        | od=6 Fr                          | LUMEN_TOO_WIDE lumens.0.sections.0.id
            0.079 in    | od=6 Fr                          | LUMEN_TOO_WIDE lumens.0.sections.0.id
            2.1 mm      | od=2 mm; sections.0.odProximal=2.2 mm | -
            2.1 mm      | oval.width=2.2 mm; sections.0.oval.height=1 mm | -
            2.3 mm      | oval.width=2.2 mm; sections.0.oval.height=1 mm | LUMEN_TOO_WIDE lumens.0.sections.0.id
            """)
    void checksWalls(String inner, String shaft, String expected) {
        assertDeviceProblems(expected, "lumens.0.sections.0.id=" + inner
                + "; sections.0.from=0 mm; sections.0.to=100 cm; sections.0." + shaft);
    }

    /** The collar is a part of the tube; proximal to it lies the push rod. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            24 cm | -
            25 cm | PLUG_BEHIND_COLLAR sections.1.from
            """)
    void warnsOfAPlugBehindTheCollar(String collarFrom, String expected) {
        assertDeviceProblems(expected, "sections.0.from=0 mm; sections.0.to=" + collarFrom + "; sections.0.od=1.7 mm;"
                + "sections.1.from=" + collarFrom + "; sections.1.to=26 cm; sections.1.od=1.72 mm;"
                + "sections.2.from=26 cm; sections.2.to=100 cm; sections.2.oval.width=1 mm;"
                + "sections.2.oval.height=0.4 mm; lumens.0.opens=collar; lumens.0.proximalAt=25 cm;"
                + "lumens.0.sections.0.id=1.42 mm");
    }

    @Test
    void comparesALumenOnlyWithTheShaftAroundIt() {
        String shaft = "sections.0.from=0 mm; sections.0.to=30 cm; sections.0.od=1.2 mm; "
                + "sections.1.from=30 cm; sections.1.to=100 cm; sections.1.od=0.4 mm; ";
        assertDeviceProblems(null, shaft + "lumens.0.proximalAt=30 cm; lumens.0.sections.0.id=0.5 mm");
        assertDeviceProblems("LUMEN_TOO_WIDE lumens.0.sections.0.id",
                shaft + "lumens.0.proximalAt=31 cm; lumens.0.sections.0.id=0.5 mm");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            balloon.section=b; sections.0.name=b                                  | -
            balloon.section=b; sections.0.name=c                                  | UNKNOWN_REFERENCE balloon.section
            stent.section=b                                                       | UNKNOWN_REFERENCE stent.section
            cutter.section=b; cutter.type=burr                                    | UNKNOWN_REFERENCE cutter.section
            balloon.nominalPressure=8 atm; balloon.ratedBurstPressure=14 atm      | -
            balloon.nominalPressure=8 atm; balloon.ratedBurstPressure=8 bar       | \
                BURST_BELOW_NOMINAL balloon.ratedBurstPressure
            balloon.compliance.0.pressure=8 atm; balloon.compliance.0.diameter=2 mm; \
                balloon.compliance.1.pressure=10 atm; balloon.compliance.1.diameter=2 mm | -
            balloon.compliance.0.pressure=8 atm; balloon.compliance.0.diameter=2 mm; \
                balloon.compliance.1.pressure=8 atm; balloon.compliance.1.diameter=2.1 mm | \
                COMPLIANCE_NOT_RISING balloon.compliance.1.pressure
            balloon.compliance.0.pressure=8 atm; balloon.compliance.0.diameter=2 mm; \
                balloon.compliance.1.pressure=9 atm; balloon.compliance.1.diameter=1.9 mm | \
                COMPLIANCE_NOT_RISING balloon.compliance.1.diameter
            balloon.compliance.0.pressure=8 atm                                   | \
                MISSING_VALUE balloon.compliance.0.diameter
            stent.diameter=3 mm; stent.maximumDiameter=3.5 mm                     | -
            stent.diameter=3 mm; stent.maximumDiameter=2.9 mm                     | \
                LIMIT_BELOW_NOMINAL stent.maximumDiameter
            takesWire=0.014 in                                                    | -
            takesWire=0.014 mm                                                    | DOUBTFUL_FIGURE takesWire
            takesWire=0.014                                                       | UNREADABLE_FIGURE takesWire
            takesWire=0.070 in (1.68 mm)                                          | \
                DOUBTFUL_FIGURE takesWire, DOUBTFUL_FIGURE takesWire
            balloon.nominalPressure=8                                             | \
                UNREADABLE_FIGURE balloon.nominalPressure
            balloon.nominalPressure=8 atm / 900 kPa                               | \
                DOUBTFUL_FIGURE balloon.nominalPressure
            sections.0.discs.0.x=zero; sections.0.discs.0.y=0 mm; sections.0.discs.0.diameter=1 mm | \
                UNREADABLE_FIGURE sections.0.discs.0.x
            sections.0.od=2 mm                                                    | -
            kind=guidewire; sections.0.od=2 mm                                    | DOUBTFUL_FIGURE sections.0.od
            """)
    void checksPartsAndFigures(String notation, String expected) {
        assertDeviceProblems(expected, notation);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            revision=1                                      | -
            clearances.0.outer=snare                        | MISSING_DEFAULT_CLEARANCE clearances
            clearances.1.required=0.2 mm; clearances.1.source=s; clearances.1.inner=snare | -
            clearances.1.required=0.2 mm; clearances.1.source=s | COMPETING_RULES clearances.1
            clearances.1.required=0.2 mm; clearances.1.inner=snare | MISSING_SOURCE clearances.1
            spans.0.kinds=snare                             | MISSING_SPAN spans
            spans.0.figure=outer diameter                   | MISSING_SPAN spans, COMPETING_RULES spans.1
            spans.4=                                        | \
                MISSING_VALUE spans.4.figure, MISSING_VALUE spans.4.below, MISSING_VALUE spans.4.above, \
            MISSING_SOURCE spans.4
            confidence=0                                    | OUT_OF_RANGE confidence
            confidence=1                                    | OUT_OF_RANGE confidence
            coverage=0.5                                    | -
            coverage=95                                     | OUT_OF_RANGE coverage
            afterUse.0.growthLow=1.0; afterUse.0.growthCentre=1.1; afterUse.0.growthHigh=1.3; afterUse.0.source=s | -
            afterUse.0.growthLow=1.2; afterUse.0.growthCentre=1.1; afterUse.0.growthHigh=1.3; \
                afterUse.0.source=s | FACTORS_OUT_OF_ORDER afterUse.0.growthCentre
            afterUse.0.growthLow=0; afterUse.0.growthCentre=1.1; afterUse.0.growthHigh=1.3; \
                afterUse.0.source=s | OUT_OF_RANGE afterUse.0.growthLow
            flowLimits.0.use=contrast; flowLimits.0.least=0.2; flowLimits.0.source=s | -
            flowLimits.0.use=contrast; flowLimits.0.least=0.2 | MISSING_SOURCE flowLimits.0
            flowLimits.0.source=s                           | \
                MISSING_VALUE flowLimits.0.use, MISSING_VALUE flowLimits.0.least
            flowLimits.0.use=contrast; flowLimits.0.least=1.01; flowLimits.0.source=s | OUT_OF_RANGE flowLimits.0.least
            flowLimits.0.use=pressure; flowLimits.0.least=-0.1; flowLimits.0.source=s | OUT_OF_RANGE flowLimits.0.least
            allowances.0.purpose=grip; allowances.0.length=10 cm; allowances.0.source=s | -
            allowances.0.purpose=grip; allowances.0.length=-10 cm; allowances.0.source=s | \
                UNREADABLE_FIGURE allowances.0.length
            ratioBands.0.use=burr to vessel; ratioBands.0.low=0.4; ratioBands.0.high=0.6; \
                ratioBands.0.meaning=usual; ratioBands.0.source=s | -
            ratioBands.0.use=burr to vessel; ratioBands.0.low=0.7; ratioBands.0.high=0.6; \
                ratioBands.0.meaning=usual; ratioBands.0.source=s | BAND_OUT_OF_ORDER ratioBands.0.high
            ratioBands.0.use=burr to vessel; ratioBands.0.meaning=usual; ratioBands.0.source=s | \
                BAND_WITHOUT_ENDS ratioBands.0
            ratioBands.0.use=burr to vessel; ratioBands.0.low=0; ratioBands.0.meaning=usual; \
                ratioBands.0.source=s | OUT_OF_RANGE ratioBands.0.low
            chanceLimits.0.greatest=0.01; chanceLimits.0.source=s | -
            chanceLimits.0.greatest=2; chanceLimits.0.source=s | OUT_OF_RANGE chanceLimits.0.greatest
            """)
    void checksRuleSets(String notation, String expected) {
        RuleSet rules = (RuleSet) DocumentKind.RULES.create();
        assertProblems(expected, Notation.set(rules, "sources.0.id=s;" + GOOD_RULES + ";" + notation));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            rules=../rules/default.rules.json                       | -
            rules=C:\\x.rules.json                                  | BAD_PATH rules
            rules=..\\x.rules.json                                  | BAD_PATH rules
            rules=/x.rules.json                                     | BAD_PATH rules
            rules=x.devices.json                                    | BAD_PATH rules
            libraries=y.json                                        | BAD_PATH libraries[1]
            path.segments.0.length=50 mm; lesion.at=20 mm; lesion.length=30 mm | -
            path.segments.0.length=50 mm; lesion.at=20 mm; lesion.length=31 mm | LESION_BEYOND_PATH lesion.at
            path.segments.0.name=?; lesion.at=20 mm; lesion.length=31 mm | -
            path.segments.0.bendAngleDegrees=361                    | OUT_OF_RANGE path.segments.0.bendAngleDegrees
            path.segments.0.bendAngleDegrees=-1                     | OUT_OF_RANGE path.segments.0.bendAngleDegrees
            conditions.inside.0.device=b-1; conditions.inside.0.tipAhead=-3 cm; conditions.inside.0.used=true | -
            conditions.inside.0.wire=w-1                            | MISSING_VALUE conditions.inside.0.device
            conditions.inside.0.device=b-1; conditions.inside.0.tipAhead=3 | \
                UNREADABLE_FIGURE conditions.inside.0.tipAhead
            conditions.through.extension=e-1#main; conditions.through.protrusion=8 cm | -
            conditions.through.protrusion=8 cm                      | MISSING_VALUE conditions.through.extension
            conditions.through.extension=e-1; conditions.through.protrusion=far | \
                UNREADABLE_FIGURE conditions.through.protrusion
            conditions.through.extension=e-1; conditions.direction=over wire tail | \
                CONDITIONS_EXCLUDE conditions.through
            conditions.inside.0.device=b-1; conditions.direction=over wire tail | \
                CONDITIONS_EXCLUDE conditions.inside
            conditions.bends.0.radius=20 mm; conditions.bends.0.angleDegrees=90 | -
            conditions.bends.0.where=vessel                         | MISSING_VALUE conditions.bends.0.radius
            conditions.bends.0.radius=0 mm                          | \
                DOUBTFUL_FIGURE conditions.bends.0.radius, NOT_MORE_THAN_ZERO conditions.bends.0.radius
            conditions.bends.0.where=vessel; conditions.bends.0.radius=20 mm; \
                conditions.bends.0.vesselDiameter=3 mm | -
            conditions.bends.0.where=vessel; conditions.bends.0.radius=20 mm; \
                conditions.bends.0.vesselDiameter=0 mm | \
                DOUBTFUL_FIGURE conditions.bends.0.vesselDiameter, NOT_MORE_THAN_ZERO conditions.bends.0.vesselDiameter
            conditions.bends.0.where=vessel; conditions.bends.0.radius=20 mm; \
                conditions.bends.0.vesselDiameter=0.3 mm | \
                DOUBTFUL_FIGURE conditions.bends.0.vesselDiameter
            conditions.bends.0.where=vessel; conditions.bends.0.radius=20 mm; \
                conditions.bends.0.vesselDiameter=wide | \
                UNREADABLE_FIGURE conditions.bends.0.vesselDiameter
            conditions.bends.0.where=vessel; conditions.bends.0.radius=2 mm; \
                conditions.bends.0.vesselDiameter=4 mm | -
            conditions.bends.0.where=vessel; conditions.bends.0.radius=2 mm; \
                conditions.bends.0.vesselDiameter=4.1 mm | \
                VESSEL_WIDER_THAN_BEND conditions.bends.0.vesselDiameter
            conditions.bends.0.radius=20 mm; conditions.bends.0.vesselDiameter=3 mm | \
                CONDITIONS_EXCLUDE conditions.bends.0.vesselDiameter
            path.segments.0.diameter=6 mm; path.segments.0.bendRadius=2 mm | \
                VESSEL_WIDER_THAN_BEND path.segments.0.diameter
            path.segments.0.diameter=3 in                           | DOUBTFUL_FIGURE path.segments.0.diameter
            conditions.bends.0.radius=-5 mm                         | UNREADABLE_FIGURE conditions.bends.0.radius
            conditions.bends.0.radius=20 mm; conditions.bends.0.angleDegrees=0 | \
                OUT_OF_RANGE conditions.bends.0.angleDegrees
            conditions.bends.0.radius=20 mm; conditions.bends.0.angleDegrees=361 | \
                OUT_OF_RANGE conditions.bends.0.angleDegrees
            """)
    void checksCharts(String notation, String expected) {
        FitChart chart = (FitChart) DocumentKind.CHART.create();
        assertProblems(expected, Notation.set(chart,
                "libraries=a.devices.json; rules=r.rules.json; outer=; inner=;" + notation));
    }

    @Test
    void requiresWhatAChartCannotDoWithout() {
        assertProblems("MISSING_VALUE libraries, MISSING_VALUE rules, MISSING_VALUE outer, MISSING_VALUE inner",
                DocumentKind.CHART.create());
    }

    @Test
    void tellsAnInheritedFaultOnceAndOfTheLine() {
        DeviceLibrary library = Notation.set((DeviceLibrary) DocumentKind.DEVICES.create(), "sources.0.id=s;"
                + "lines.0.id=l; lines.0.source=s; lines.0.balloon.nominalPressure=8 atm;"
                + "lines.0.balloon.ratedBurstPressure=7 atm; devices.0.id=a; devices.0.line=l;"
                + "devices.1.id=b; devices.1.line=l; devices.2.id=c; devices.2.line=l;"
                + "devices.2.balloon.ratedBurstPressure=9 atm");
        assertProblems("BURST_BELOW_NOMINAL lines.0.balloon.ratedBurstPressure", library);
    }

    @Test
    void pointsIntoTheText() {
        ModelProblem syntax = onlyProblem("takesWire=0.014 inchz");
        assertEquals(ProblemCode.UNREADABLE_FIGURE, syntax.code());
        assertTrue(syntax.part().start() > 0, syntax.toString());
        assertEquals(new Part(0, 5), onlyProblem("takesWire=0.014 mm").part());
    }

    @Test
    void leavesTheDocumentAlone() {
        Document document = Notation.set(DocumentKind.DEVICES.create(), "devices.0.id=a; lines.0.id=b");
        Device device = ((DeviceLibrary) document).getDevices().get(0);
        new Validation().check(document);
        assertSame(document, device.eContainer());
    }

    @ParameterizedTest
    @EnumSource
    void hasWordsForEveryProblem(ProblemCode code) {
        String words = ProblemWords.of(code, List.of("first", "second", "third"));
        assertFalse(words.isEmpty() || words.contains("{") || words.endsWith("."), words);
    }

    private static ModelProblem onlyProblem(String notation) {
        List<ModelProblem> problems = new Validation().check(device(notation));
        assertEquals(1, problems.size());
        return problems.get(0);
    }

    private static void assertDeviceProblems(String expected, String notation) {
        Document library = device(notation);
        EObject device = ((DeviceLibrary) library).getDevices().get(0);
        assertEquals(expected == null ? "" : expected, words(new Validation().check(library), device));
    }

    private static Document device(String notation) {
        Document library = Notation.set(DocumentKind.DEVICES.create(), "sources.0.id=s; devices.0.id=d;"
                + "devices.0.source=s; devices.0.effectiveLength=100 cm");
        Notation.set(((DeviceLibrary) library).getDevices().get(0), notation);
        return library;
    }

    private static void assertProblems(String expected, Document document) {
        assertEquals(expected == null ? "" : expected, words(new Validation().check(document), document));
    }

    private static String words(List<ModelProblem> problems, EObject whole) {
        return problems.stream().map(p -> p.code() + " " + Notation.path(whole, p.subject(), p.feature())
                + (p.index() < 0 ? "" : "[" + p.index() + "]")).collect(Collectors.joining(", "));
    }
}
