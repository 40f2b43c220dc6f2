/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import org.ferrule.calc.Calculator;
import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.CalculationText;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.ParserSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** The command of one calculator: an option for each parameter, and words without a name for its main parameter. */
public final class CalculatorCommand implements Callable<Integer> {
    private static final int ANSWERED = 0;
    private static final int REFUSED = 1;
    private static final String JSON = "--json";

    private final Calculator calculator;
    private final CommandSpec spec;

    /** The command of a calculator. */
    public CalculatorCommand(Calculator calculator) {
        this.calculator = calculator;
        spec = CommandSpec.wrapWithoutInspection(this).name(calculator.name()).mixinStandardHelpOptions(true);
        // a contributor may begin with a minus sign
        spec.parser(new ParserSpec().unmatchedOptionsArePositionalParams(hasMain()));
        spec.usageMessage().sortOptions(false).description(escaped(calculator.purpose()));
        calculator.parameters().forEach(this::add);
        spec.addOption(OptionSpec.builder(JSON).type(boolean.class).description("Writes the answer as JSON.").build());
    }

    /** What the command takes. */
    public CommandSpec spec() {
        return spec;
    }

    private boolean hasMain() {
        return calculator.parameters().stream().anyMatch(parameter -> parameter.occurrence().isMain());
    }

    private void add(Parameter<?> parameter) {
        String label = parameter.kind().form().name().replace('_', '-');
        OptionSpec.Builder option = OptionSpec.builder(option(parameter)).paramLabel(label).arity("1")
                .required(parameter.occurrence() == Parameter.Occurrence.REQUIRED).description(description(parameter));
        spec.addOption((isMany(parameter) ? option.type(List.class).auxiliaryTypes(String.class)
                : option.type(String.class)).build());
        if (parameter.occurrence().isMain()) {
            spec.addPositional(PositionalParamSpec.builder().paramLabel(label).type(List.class)
                    .auxiliaryTypes(String.class).arity("0..*").index("0..*")
                    .description(escaped(parameter.help()) + ", without its option.").build());
        }
    }

    private static boolean isMany(Parameter<?> parameter) {
        return parameter.occurrence().isMany();
    }

    private static String option(Parameter<?> parameter) {
        return "--" + parameter.name();
    }

    private static String description(Parameter<?> parameter) {
        String range = parameter.limits().inWords();
        String many = isMany(parameter) ? "; may be given several times" : "";
        String usual = parameter.defaultText().map(text -> " By default " + text + ".").orElse("");
        return escaped(parameter.help() + " (such as " + parameter.kind().hint() + (range.isEmpty() ? "" : "; " + range)
                + many + ")." + usual);
    }

    /** Descriptions are patterns of a formatter. */
    private static String escaped(String text) {
        return text.replace("%", "%%");
    }

    @Override
    public Integer call() {
        ParseResult given = spec.commandLine().getParseResult();
        Calculation answer = answer(given);
        PrintWriter out = spec.commandLine().getOut();
        if (given.hasMatchedOption(JSON)) {
            out.println(CalculationJson.write(answer));
        } else {
            CalculationText.write(answer).forEach(out::println);
        }
        return answer.value().isPresent() ? ANSWERED : REFUSED;
    }

    private Calculation answer(ParseResult given) {
        try {
            return calculator.calculate(Arguments.of(calculator.parameters(), texts(given)));
        } catch (ArgumentException e) {
            throw new CommandLineException("--" + e.getMessage());
        }
    }

    private Map<String, List<String>> texts(ParseResult given) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        for (Parameter<?> parameter : calculator.parameters()) {
            List<String> values = new ArrayList<>();
            if (parameter.occurrence().isMain()) {
                given.matchedPositionals().forEach(words -> values.addAll(words.stringValues()));
            }
            values.addAll(given.hasMatchedOption(option(parameter))
                    ? given.matchedOption(option(parameter)).stringValues() : List.of());
            texts.put(parameter.name(), values);
        }
        return texts;
    }
}
