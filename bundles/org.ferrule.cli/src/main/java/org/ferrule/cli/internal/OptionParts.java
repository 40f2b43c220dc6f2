/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.quantity.QuantitySyntaxException;

/** The value of an option that has several parts, such as {@code ID,wire=ID,used}; each is taken once. */
final class OptionParts {
    private final String option;
    private final String text;
    private final String first;
    private final List<String> rest;

    /**
     * Splits a value.
     *
     * @param option its name, for errors
     * @param text the value
     */
    OptionParts(String option, String text) {
        this.option = option;
        this.text = text;
        List<String> parts = List.of(text.split(",", -1));
        this.first = parts.get(0).strip();
        this.rest = parts.stream().skip(1).map(String::strip).collect(Collectors.toCollection(ArrayList::new));
    }

    /** What stands before the first comma. */
    String first() {
        return first;
    }

    /** Takes the value after {@code key=}. */
    Optional<String> take(String key) {
        String start = key + "=";
        Optional<String> found = rest.stream().filter(p -> p.startsWith(start)).findFirst();
        found.ifPresent(rest::remove);
        return found.map(p -> p.substring(start.length()).strip());
    }

    /** Takes a word, and tells whether it was there. */
    boolean takeWord(String word) {
        return rest.remove(word);
    }

    /** Takes the first part that is left. */
    Optional<String> takeNext() {
        return rest.isEmpty() ? Optional.empty() : Optional.of(rest.remove(0));
    }

    /** Reads a part; what cannot be read is an error that names option and text. */
    <T> T read(String part, Function<String, T> reader) {
        try {
            return reader.apply(part);
        } catch (QuantitySyntaxException | NumberFormatException e) {
            throw error("\"" + part + "\" cannot be read"
                    + (e instanceof NumberFormatException ? "; expected a number" : ": " + e.getMessage()));
        } catch (ReferenceException | IllegalArgumentException e) {
            throw error(e.getMessage());
        }
    }

    /** Refuses what nobody took. */
    void requireNothingLeft(String known) {
        if (!rest.isEmpty()) {
            throw error("\"" + rest.get(0) + "\" is not understood here; known are " + known);
        }
    }

    CommandLineException error(String message) {
        return new CommandLineException(option + " \"" + text + "\": " + message);
    }
}
