/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.calc.Calculator;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.input.ValueKind;
import org.ferrule.calc.result.Basis;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Refusal;

/** A calculator whose words stand in a file of properties. Parameters are kept in the order in which they are made. */
abstract class WordedCalculator implements Calculator {
    private final String name;
    private final Words words;
    private final List<Parameter<?>> parameters = new ArrayList<>();

    WordedCalculator(String name) {
        this.name = name;
        this.words = new Words(name);
    }

    @Override
    public final String name() {
        return name;
    }

    @Override
    public final String title() {
        return words.say("title");
    }

    @Override
    public final String purpose() {
        return words.say("purpose");
    }

    @Override
    public final List<Parameter<?>> parameters() {
        return List.copyOf(parameters);
    }

    final <T> Parameter<T> parameter(String parameter, ValueKind<T> kind, Occurrence occurrence, Limits limits) {
        return keep(new Parameter<>(parameter, kind, occurrence, Optional.empty(), limits, help(parameter)));
    }

    final <T> Parameter<T> parameter(String parameter, ValueKind<T> kind, Limits limits, String defaultText) {
        return keep(new Parameter<>(parameter, kind, Occurrence.OPTIONAL, Optional.of(defaultText), limits,
                help(parameter)));
    }

    private String help(String parameter) {
        return words.say("help." + parameter);
    }

    private <T> Parameter<T> keep(Parameter<T> parameter) {
        parameters.add(parameter);
        return parameter;
    }

    final String say(String key, Object... values) {
        return words.say(key, values);
    }

    /** The answer with the words for a variant of the question. */
    final Calculation answer(String variant, BigDecimal value, String unit) {
        return Calculation.of(words.sayVariant("what", variant), value, unit, basis(variant, variant));
    }

    /** The answer with the words for a variant of the question, and for a case of validity. */
    final Calculation answer(String variant, String validity, BigDecimal value, String unit) {
        return Calculation.of(words.sayVariant("what", variant), value, unit, basis(variant, validity));
    }

    /** No answer, with the reason; the code's words are found with points for blanks. */
    final Calculation refusal(String variant, String code, String unit, Object... values) {
        String reason = words.say("refusal." + code.replace(' ', '-'), values);
        return Calculation.refused(words.sayVariant("what", variant), new Refusal(code, reason), unit,
                basis(variant, variant));
    }

    private Basis basis(String variant, String validity) {
        return new Basis(words.sayVariant("method", variant), words.sayVariant("validity", validity),
                words.sayVariant("source", variant), words.caution());
    }
}
