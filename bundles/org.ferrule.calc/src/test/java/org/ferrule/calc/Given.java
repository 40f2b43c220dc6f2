/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.calc.catalogue.Calculators;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.result.Calculation;

/** Asks a calculator with arguments in one line, {@code device: 1 mm | lumen: 2 mm}. */
public final class Given {
    private Given() {
    }

    /** The answer. */
    public static Calculation answer(String calculator, String arguments) {
        Calculator asked = new Calculators().find(calculator).orElseThrow();
        return asked.calculate(Arguments.of(asked.parameters(), texts(arguments)));
    }

    static Map<String, List<String>> texts(String arguments) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        Arrays.stream(arguments.split(" \\| ")).filter(argument -> !argument.isBlank())
                .map(argument -> argument.split(": ", 2))
                .forEach(pair -> texts.computeIfAbsent(pair[0], name -> new ArrayList<>()).add(pair[1]));
        return texts;
    }
}
