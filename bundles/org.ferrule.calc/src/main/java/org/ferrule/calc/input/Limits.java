/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.util.Optional;

/**
 * The range of a parameter, as texts of its kind.
 *
 * @param least the lower end, if there is one
 * @param leastAllowed whether the lower end itself may be given
 * @param most the upper end, if there is one
 * @param mostAllowed whether the upper end itself may be given
 */
public record Limits(Optional<String> least, boolean leastAllowed, Optional<String> most, boolean mostAllowed) {
    /** No limits but those of the kind. */
    public static final Limits NONE = new Limits(Optional.empty(), true, Optional.empty(), true);

    /** More than that. */
    public static Limits above(String least) {
        return new Limits(Optional.of(least), false, Optional.empty(), true);
    }

    /** That or more. */
    public static Limits from(String least) {
        return new Limits(Optional.of(least), true, Optional.empty(), true);
    }

    /** Between both, ends excluded. */
    public static Limits between(String least, String most) {
        return new Limits(Optional.of(least), false, Optional.of(most), false);
    }

    /** From one to the other, ends included. */
    public static Limits fromTo(String least, String most) {
        return new Limits(Optional.of(least), true, Optional.of(most), true);
    }

    /** From one, included, to the other, excluded. */
    public static Limits fromToBelow(String least, String most) {
        return new Limits(Optional.of(least), true, Optional.of(most), false);
    }

    /** From one, excluded, to the other, included. */
    public static Limits aboveTo(String least, String most) {
        return new Limits(Optional.of(least), false, Optional.of(most), true);
    }

    /** Returns the range in words, empty where there is none. */
    public String inWords() {
        String lower = least.map(end -> (leastAllowed ? "at least " : "above ") + end).orElse("");
        String upper = most.map(end -> (mostAllowed ? "at most " : "below ") + end).orElse("");
        return lower + (lower.isEmpty() || upper.isEmpty() ? "" : ", ") + upper;
    }

    /** Tells whether a value lies in the range. */
    <T> boolean allow(T value, ValueKind<T> kind) {
        return kind.order().isEmpty() || least.map(end -> compare(value, end, kind))
                .map(sign -> sign > 0 || sign == 0 && leastAllowed).orElse(true)
                && most.map(end -> compare(value, end, kind)).map(sign -> sign < 0 || sign == 0 && mostAllowed)
                        .orElse(true);
    }

    private static <T> int compare(T value, String end, ValueKind<T> kind) {
        return kind.order().orElseThrow().compare(value, kind.reader().apply(end));
    }
}
