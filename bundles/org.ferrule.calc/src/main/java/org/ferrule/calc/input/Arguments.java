/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The texts given for the parameters of a calculator, all of them readable and in range. */
public final class Arguments {
    private final Map<String, List<String>> texts;

    private Arguments(Map<String, List<String>> texts) {
        this.texts = texts;
    }

    /**
     * Checks texts and adds the defaults.
     *
     * @param parameters what may be given
     * @param texts the texts by name of parameter
     * @throws ArgumentException naming the parameter, and the text if there is one, that is unknown, missing, given too
     *         often, not readable or out of range
     */
    public static Arguments of(List<Parameter<?>> parameters, Map<String, List<String>> texts) {
        Map<String, List<String>> checked = new LinkedHashMap<>();
        for (Parameter<?> parameter : parameters) {
            List<String> given = texts.getOrDefault(parameter.name(), List.of());
            List<String> used = given.isEmpty() ? parameter.defaultText().map(List::of).orElse(List.of()) : given;
            checkNumber(parameter, used);
            used.forEach(parameter::read);
            checked.put(parameter.name(), List.copyOf(used));
        }
        texts.keySet().stream().filter(name -> !checked.containsKey(name)).findFirst().ifPresent(unknown -> {
            throw ArgumentException.of(unknown, "there is no such parameter");
        });
        return new Arguments(checked);
    }

    private static void checkNumber(Parameter<?> parameter, List<String> used) {
        if (used.isEmpty() && parameter.occurrence().isRequired()) {
            throw ArgumentException.of(parameter.name(), "is missing");
        }
        if (used.size() > 1 && !parameter.occurrence().isMany()) {
            throw ArgumentException.of(parameter.name(), used.get(1), "may be given only once");
        }
    }

    /** Returns the value of a parameter that was given or has a default. */
    public <T> T get(Parameter<T> parameter) {
        return find(parameter).orElseThrow(() -> ArgumentException.of(parameter.name(), "is missing"));
    }

    /** Returns the value of a parameter, if it was given or has a default. */
    public <T> Optional<T> find(Parameter<T> parameter) {
        return all(parameter).stream().findFirst();
    }

    /** Returns all values of a parameter in the order given. */
    public <T> List<T> all(Parameter<T> parameter) {
        return texts(parameter).stream().map(parameter::read).toList();
    }

    /** Returns the texts of a parameter in the order given. */
    public List<String> texts(Parameter<?> parameter) {
        return texts.getOrDefault(parameter.name(), List.of());
    }

    /** Tells whether the parameter was given or has a default. */
    public boolean has(Parameter<?> parameter) {
        return !texts(parameter).isEmpty();
    }

    /** Returns the exception for arguments that are each right but make no sense as they are. */
    public ArgumentException refuse(Parameter<?> parameter, String problem) {
        return texts(parameter).stream().findFirst()
                .map(text -> ArgumentException.of(parameter.name(), text, problem))
                .orElseGet(() -> ArgumentException.of(parameter.name(), problem));
    }
}
