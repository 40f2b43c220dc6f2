/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A kind of value that is given as text.
 *
 * @param <T> what the text becomes
 * @param form what a field for it looks like
 * @param hint an example of what to type, such as {@code 1.2 mm}
 * @param choices the words that may be given, if only these may
 * @param reader turns a text into the value; an IllegalArgumentException tells in words what is wrong
 * @param order tells which of two values is larger, where that has a meaning
 */
public record ValueKind<T>(Form form, String hint, List<String> choices, Function<String, T> reader,
        Optional<Comparator<T>> order) {

    /** Copies the list. */
    public ValueKind {
        choices = List.copyOf(choices);
    }

    static <T extends Comparable<T>> ValueKind<T> ordered(Form form, String hint, Function<String, T> reader) {
        return ordered(form, hint, reader, Comparator.naturalOrder());
    }

    static <T> ValueKind<T> ordered(Form form, String hint, Function<String, T> reader, Comparator<T> order) {
        return new ValueKind<>(form, hint, List.of(), reader, Optional.of(order));
    }

    static <T> ValueKind<T> unordered(Form form, String hint, Function<String, T> reader) {
        return new ValueKind<>(form, hint, List.of(), reader, Optional.empty());
    }
}
