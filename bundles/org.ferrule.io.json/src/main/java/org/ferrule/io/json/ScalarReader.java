/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.io.json.JsonNode.NumberNode;
import org.ferrule.io.json.JsonNode.StringNode;
import org.ferrule.io.json.JsonNode.WordNode;
import org.ferrule.model.check.Severity;

/** Turns scalar JSON values into values of the model. */
final class ScalarReader {

    /** Numbers in documents are factors and angles; this many digits before or after the point are not meant. */
    private static final int MOST_DIGITS = 100;

    private final SourceText text;
    private final Problems problems;
    private final Severity severity;

    /** Creates a reader that reports what it cannot turn into a value with this severity. */
    ScalarReader(SourceText text, Problems problems, Severity severity) {
        this.text = text;
        this.problems = problems;
        this.severity = severity;
    }

    /** Returns the value, or nothing, and then there is a problem. */
    Optional<Object> read(JsonNode node, EAttribute attribute) {
        EDataType type = attribute.getEAttributeType();
        Class<?> javaType = type.getInstanceClass();
        if (type instanceof EEnum words) {
            return word(node, attribute.getName(), words);
        }
        if (javaType == boolean.class) {
            return truth(node);
        }
        if (javaType == int.class || javaType == Integer.class) {
            return integer(node);
        }
        return javaType == BigDecimal.class ? decimal(node).map(Object.class::cast) : text(node, type);
    }

    private Optional<Object> text(JsonNode node, EDataType type) {
        if (node instanceof StringNode string) {
            return Optional.of(EcoreUtil.createFromString(type, string.value()));
        }
        return wrongType(node, type.getInstanceClass() == String.class ? "a text"
                : "a text with its unit, such as " + Examples.of(type));
    }

    private Optional<Object> truth(JsonNode node) {
        if (node instanceof WordNode word && !word.words().equals("null")) {
            return Optional.of(Boolean.valueOf(word.words()));
        }
        return wrongType(node, "true or false");
    }

    private Optional<Object> integer(JsonNode node) {
        Optional<BigDecimal> number = decimal(node);
        try {
            return number.map(value -> node instanceof NumberNode n && n.spelling().matches("-?\\d+")
                    ? value.intValueExact() : null).map(Object.class::cast)
                    .or(() -> number.flatMap(n -> notWhole(node)));
        } catch (ArithmeticException e) {
            return notWhole(node);
        }
    }

    private Optional<Object> notWhole(JsonNode node) {
        problems.add(severity, FormatCode.BAD_NUMBER, node, "found " + node.words(),
                "a whole number between " + Integer.MIN_VALUE + " and " + Integer.MAX_VALUE);
        return Optional.empty();
    }

    private Optional<BigDecimal> decimal(JsonNode node) {
        if (!(node instanceof NumberNode number)) {
            return wrongType(node, "a number").map(BigDecimal.class::cast);
        }
        BigDecimal value = new BigDecimal(number.spelling());
        if (Math.abs((long) value.scale()) + value.precision() > MOST_DIGITS) {
            problems.add(severity, FormatCode.BAD_NUMBER, node, "found " + node.words(),
                    "at most " + MOST_DIGITS + " digits");
            return Optional.empty();
        }
        return Optional.of(value);
    }

    private Optional<Object> word(JsonNode node, String key, EEnum words) {
        List<String> known = words.getELiterals().stream().map(EEnumLiteral::getLiteral).toList();
        String accepted = known.stream().map(Layout::string).collect(Collectors.joining(", "));
        if (!(node instanceof StringNode string)) {
            return wrongType(node, "one of " + accepted);
        }
        EEnumLiteral literal = words.getEEnumLiteralByLiteral(string.value());
        if (literal == null) {
            unknownWord(string, key, known, accepted);
        }
        return Optional.ofNullable(literal).map(EEnumLiteral::getInstance);
    }

    private void unknownWord(StringNode node, String key, List<String> known, String accepted) {
        Optional<String> nearest = Nearest.of(node.value(), known).map(Layout::string);
        problems.add(severity, FormatCode.UNKNOWN_WORD, text.region(node),
                Layout.string(node.value()) + " is no word for \"" + key + "\""
                        + nearest.map(word -> "; did you mean " + word + "?").orElse(""),
                "one of " + accepted, nearest.orElse(""));
    }

    private Optional<Object> wrongType(JsonNode node, String expected) {
        problems.add(severity, FormatCode.WRONG_TYPE, node, "found " + node.words(), expected);
        return Optional.empty();
    }
}
