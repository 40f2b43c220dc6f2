/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.calc.catalogue.Calculators;
import org.ferrule.calc.input.Form;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Calculators say enough of themselves to make a form or a command from it. */
class DescriptionTest {

    static List<Calculator> calculators() {
        return new Calculators().all();
    }

    static Stream<Parameter<?>> parameters() {
        return calculators().stream().flatMap(calculator -> calculator.parameters().stream());
    }

    @ParameterizedTest
    @MethodSource("calculators")
    void hasANameATitleAndAPurposeOfOneSentence(Calculator calculator) {
        assertTrue(calculator.name().matches("[a-z]+(-[a-z]+)*"), calculator.name());
        assertFalse(calculator.title().isBlank());
        assertTrue(calculator.purpose().matches("[A-Z][^.]*\\."), calculator.purpose());
        assertEquals(Optional.of(calculator.name()), new Calculators().find(calculator.name()).map(Calculator::name));
    }

    @ParameterizedTest
    @MethodSource("calculators")
    void namesEveryParameterOnce(Calculator calculator) {
        List<String> names = calculator.parameters().stream().<String>map(Parameter::name).toList();
        assertEquals(names.stream().distinct().toList(), names);
        assertTrue(calculator.parameters().stream().filter(p -> p.occurrence().isMain()).count() <= 1);
    }

    @ParameterizedTest
    @MethodSource("parameters")
    void everyParameterCanBeFilledInFromItsHint(Parameter<?> parameter) {
        assertTrue(parameter.name().matches("[a-z]+(-[a-z]+)*"), parameter.name());
        assertFalse(parameter.help().isBlank() || parameter.help().endsWith("."), parameter.help());
        Stream.of(parameter.kind().hint().split(", ")).forEach(example -> parameter.kind().reader().apply(example));
        assertEquals(parameter.kind().form() == Form.CHOICE, !parameter.kind().choices().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("parameters")
    void everyDefaultAndLimitIsOneOfItsKind(Parameter<?> parameter) {
        parameter.defaultText().ifPresent(parameter::read);
        Limits limits = parameter.limits();
        Stream.of(limits.least(), limits.most()).flatMap(Optional::stream)
                .forEach(end -> parameter.kind().reader().apply(end));
        assertTrue(limits.inWords().isEmpty() || parameter.kind().order().isPresent(), parameter.name());
    }

    @Test
    void knowsNoOther() {
        assertEquals(Optional.empty(), new Calculators().find("luck"));
    }
}
