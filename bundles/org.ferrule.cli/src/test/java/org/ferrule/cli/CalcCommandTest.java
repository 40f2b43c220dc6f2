/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.ferrule.calc.Calculator;
import org.ferrule.calc.catalogue.Calculators;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;

class CalcCommandTest {

    static List<Calculator> calculators() {
        return new Calculators().all();
    }

    @ParameterizedTest
    @MethodSource("calculators")
    void listsEveryCalculatorAndTellsWhatItAsksFor(Calculator calculator) {
        assertTrue(Run.of("calc").out().contains("  " + calculator.name() + " "));
        assertEquals(Run.of("calc").out(), Run.of("calc", "--help").out());
        Run help = Run.of("calc", calculator.name(), "--help");
        assertEquals(0, help.exitCode(), help::err);
        calculator.parameters().forEach(parameter -> {
            assertTrue(help.out().contains("--" + parameter.name() + "="), parameter.name());
            parameter.defaultText().ifPresent(usual -> assertTrue(flat(help.out()).contains("By default " + usual)));
        });
    }

    private static String flat(String usage) {
        return usage.replaceAll("\\s+", " ");
    }

    @Test
    void withoutACalculatorEndsWithZero() {
        assertEquals(0, Run.of("calc").exitCode());
    }

    @Test
    void packsDiscsGivenAsWords() throws IOException {
        JsonNode answer = json("pack", "1mm", "2mm", "3 mm");
        assertEquals(5, answer.get("value").asDouble());
        assertEquals("mm", answer.get("unit").asText());
        assertEquals(3, answer.get("positions").size());
        assertEquals(1, answer.get("positions").get(0).get("diameter").asDouble());
        assertFalse(answer.has("low") || answer.has("high"), "an exact diameter is no interval");
    }

    /** The figures of reference: 7 mm through 1.45 mm, and 1.8068 mm for 10 mm (closed form, computed). */
    @Test
    void tellsTheLongestLengthOrTheLumenNeeded() throws IOException {
        assertEquals(7, json("bend", "--device", "1.25mm", "--lumen", "1.45mm", "--radius", "30mm").get("value")
                .asDouble());
        assertEquals(1.8068, json("bend", "--device", "1.2mm", "--radius", "20 mm", "--length", "10mm").get("value")
                .asDouble(), 0.00005);
    }

    /** Wire of 0.014 in in a guide of 0.070 in: 0.426 centred, 0.807 on the wall (exact annulus, computed). */
    @Test
    void givesFlowAsAnInterval() throws IOException {
        JsonNode answer = json("flow", "--lumen", "0.070in", "--device", "0.014in");
        assertEquals(0.425778, answer.get("low").asDouble(), 0.000001);
        assertEquals(0.807, answer.get("high").asDouble(), 0.0005);
        assertEquals("1", answer.get("unit").asText());
        assertEquals(2, Stream.of("low", "high").filter(answer::has).count());
        JsonNode two = json("flow", "--lumen", "0.070in", "--device", "2.6Fr", "--device", "2.6Fr");
        assertTrue(two.get("low").asDouble() <= 0.07 && 0.07 <= two.get("high").asDouble() + 0.01, two::toString);
    }

    @Test
    void roundsAToleranceFactorUp() throws IOException {
        double factor = json("factor", "--n", "15", "--confidence", "0.95", "--coverage", "0.99").get("value")
                .asDouble();
        assertEquals(3.5201, factor, 0.00005, "ISO 16269-6, computed");
    }

    /** 0.020 +- 0.018 in, from the solution page of a textbook problem; root sum square 0.01122 computed. */
    @Test
    void stacksContributorsWithSigns() throws IOException {
        JsonNode answer = json("stack", "6.520in+-0.010", "-1.500in+-0.001", "-2.000in+-0.003", "-3.000in+-0.004",
                "--unit", "in");
        assertEquals(0.020, answer.get("value").asDouble());
        assertEquals(0.002, answer.get("low").asDouble());
        assertEquals(0.038, answer.get("high").asDouble());
        assertEquals("[in_i]", answer.get("unit").asText());
        assertEquals(0.01122, answer.get("rssHighIn").asDouble() - 0.020, 0.000005);
    }

    /** 80 kg, 1.5 mg/dL, 75 years: 266.7 mL (Cigarroa et al. 1989) and 48.15 mL/min (Cockcroft and Gault 1976). */
    @Test
    void setsLimitsOfContrastSideBySide() throws IOException {
        JsonNode clearance = json("creatinine-clearance", "--age", "75", "--weight", "80kg", "--creatinine",
                "1.5mg/dL", "--sex", "m");
        assertEquals(48.148, clearance.get("value").asDouble(), 0.0005);
        assertEquals("mL/min", clearance.get("unit").asText());
        JsonNode alone = json("contrast-limit", "--weight", "80kg", "--creatinine", "1.5mg/dL");
        assertEquals(266.666, alone.get("value").asDouble());
        assertEquals(List.of("value", "unit", "method", "validity", "source", "capped", "limits"), keys(alone));
        assertEquals("age and sex", alone.get("limits").get(1).get("needs").asText());
        JsonNode all = json("contrast-limit", "--weight", "176lb", "--creatinine", "133 umol/L", "--age", "75",
                "--sex", "m");
        assertEquals(List.of("limit", "limitMl", "source", "mark"), keys(all.get("limits").get(3)));
        assertEquals(177, all.get("limits").get(3).get("limitMl").asDouble(), 0.5);
    }

    @Test
    void tellsPointsAndTheirRange() throws IOException {
        JsonNode score = json("occlusion-score", "--length", "20mm", "--bend", "46deg", "--blunt-stump", "no");
        assertEquals(4, score.get("value").asInt());
        assertEquals(2, score.get("low").asInt(), "Morino et al. 2011: 20 mm and more than 45 degrees");
        assertEquals(List.of("calcification", "failed-before"),
                List.of(score.get("notSaid").get(0).asText(), score.get("notSaid").get(1).asText()));
        assertEquals("B2", json("lesion-class", "--length", "20mm", "--bend", "90deg").get("class").asText());
        assertEquals(2, json("dose-notice", "--kerma", "4.2Gy").get("reached").size());
    }

    /** The rule of cost per chance, Unluyurt 2004; 7.00 and 10.44 computed. */
    @Test
    void ordersTriesByCostPerChance() throws IOException {
        JsonNode answer = json("order", "10:0.9", "3:0.3", "2:0.5");
        assertEquals(7, answer.get("value").asDouble());
        assertEquals("[3,2,1]", answer.get("order").toString());
        assertEquals("[4,10,11.1111]", answer.get("index").toString());
        assertEquals(10.44, answer.get("asGiven").asDouble());
        assertEquals("[1,2]", json("order", "2:0.5", "3:0.3", "10:90%", "--stop", "11").get("order").toString());
        assertEquals("[1,2,1]", json("order", "2:0.5:0.1", "3:0.3").get("order").toString());
    }

    @Test
    void writesTheKeysThatScriptsRelyOnInThisOrder() throws IOException {
        JsonNode answer = json("inflate", "6atm=2.90mm", "8 atm = 3.00 mm", "--pressure", "7 atm", "--rated", "8 atm");
        assertEquals(List.of("value", "unit", "method", "validity", "source", "inVivoLowMm", "inVivoHighMm",
                "inVivoNote", "belowRatedBurstAtm"), keys(answer));
        assertTrue(answer.get("value").isNumber() && answer.get("belowRatedBurstAtm").isNumber());
        assertEquals(2.95, answer.get("value").asDouble());
    }

    @Test
    void writesSmallNumbersAsDecimals() {
        Run run = Run.of("calc", "joint", "1.7e-8", "--json");
        assertTrue(run.out().contains("\"value\" : 0.000000017"), run::out);
    }

    @Test
    void endsWithOneForARefusalAndSaysWhy() throws IOException {
        Run run = Run.of("calc", "inflate", "6atm=2.90mm", "8atm=3.00mm", "--pressure", "9atm", "--rated", "8atm",
                "--json");
        assertEquals(1, run.exitCode(), run::err);
        JsonNode answer = new ObjectMapper().readTree(run.out());
        assertTrue(answer.get("value").isNull());
        assertEquals("beyond rated burst", answer.get("refusal").get("code").asText());
        Run gauge = Run.of("calc", "convert", "19 G");
        assertEquals(1, gauge.exitCode());
        assertTrue(gauge.out().contains("A gauge means nothing without its table"), gauge::out);
    }

    @Test
    void saysTheAnswerAndWhatItRestsOnInWords() {
        Run run = Run.of("calc", "bend", "--device", "1.25mm", "--lumen", "1.45mm", "--radius", "30mm");
        assertEquals(0, run.exitCode(), run::err);
        List<String> lines = run.out().lines().toList();
        assertEquals("Longest rigid length that passes: 7 mm", lines.get(0));
        assertEquals(List.of("Method:", "Validity:", "Source:"),
                lines.stream().filter(line -> line.matches("(Method|Validity|Source): .*"))
                        .map(line -> line.substring(0, line.indexOf(' '))).toList());
        assertTrue(lines.get(lines.size() - 1).contains("the instructions for use decide"), run::out);
    }

    @Test
    void showsUnitsAndDetailsAsPeopleWriteThem() {
        Run stack = Run.of("calc", "stack", "2in+-0.1", "-1in+-0.1", "--unit", "in");
        assertTrue(stack.out().contains("Nominal gap: 1 in\n  between 0.8 in and 1.2 in"), stack::out);
        Run capstan = Run.of("calc", "capstan", "--friction", "0", "--bend", "90deg", "--bend", "90 deg");
        assertTrue(capstan.out().contains("Share that arrives: 1\n"), capstan::out);
        assertTrue(capstan.out().contains("arriving behind each bend: 1, 1\n"), capstan::out);
        Run pack = Run.of("calc", "pack", "1mm");
        assertTrue(pack.out().contains("positions, in mm:\n    x 0, y 0, diameter 1\n"), pack::out);
        Run reach = Run.of("calc", "reach", "--device", "142cm", "--guide", "100cm", "--needed", "30cm");
        assertTrue(reach.out().contains("reaches: yes\n"), reach::out);
        Run stiffness = Run.of("calc", "stiffness", "--outer", "1mm", "--modulus", "193 GPa", "--neighbour", "9474");
        assertTrue(stiffness.out().contains(" N mm2\n") && stiffness.out().contains("cliff: no"), stiffness::out);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            bend --device 1.25 --lumen 1.45mm --radius 30mm ; --device "1.25": expected a unit
            bend --device 1.25mm                            ; --lumen: is missing
            bend --lumen 2mm                                ; --device
            bend --device 1mm --lumen 2mm --lumen 3mm       ; should be specified only once
            pack                                            ; --device: is missing
            pack 1mm 2                                      ; --device "2": expected a unit
            factor --n 15 --sides three                     ; --sides "three": must be one of one, two
            factor --n 15 --side two                        ; --side
            factor --n 15 16                                ; 16
            contrast-limit --weight 80kg --creatinine 88mg/dL ; 88 mg/dL is no plausible serum creatinine
            contrast-limit --weight 80kg --creatinine 1.5   ; --creatinine "1.5": must have a unit (mg/dL, umol/L)
            luck                                            ; luck
            stack 1mm+-0.1 --jsn                            ; --jsn
            """)
    void endsWithTwoForWrongWordsAndNamesThem(String words, String message) {
        List<String> all = new ArrayList<>(List.of("calc"));
        all.addAll(List.of(words.split(" ")));
        Run run = Run.of(all.toArray());
        assertEquals(2, run.exitCode());
        assertEquals("", run.out());
        assertTrue(run.err().contains(message), run::err);
        assertFalse(run.err().contains("fault of the program"), run::err);
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static JsonNode json(String... words) throws IOException {
        Object[] all = Stream.of(Stream.of("calc"), Stream.of(words), Stream.of("--json")).flatMap(s -> s).toArray();
        Run run = Run.of(all);
        assertEquals(0, run.exitCode(), run::err);
        return new ObjectMapper().readTree(run.out());
    }
}
