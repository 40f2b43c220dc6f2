/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.util.Optional;

import org.ferrule.quantity.QuantitySyntaxException;

/**
 * What a calculator asks for.
 *
 * @param <T> what the text becomes
 * @param name the name, lower case, with hyphens between words
 * @param kind what kind of value it takes
 * @param occurrence how often it may be given
 * @param defaultText what counts when it is not given, if there is something
 * @param limits the range
 * @param help what it is, in a sentence without its range
 */
public record Parameter<T>(String name, ValueKind<T> kind, Occurrence occurrence, Optional<String> defaultText,
        Limits limits, String help) {

    /** How often a parameter may be given. */
    public enum Occurrence {
        /** Once. */
        REQUIRED,
        /** Not at all or once. */
        OPTIONAL,
        /** Any number of times. */
        REPEATED,
        /** Once, and so much the main thing that a command line takes it without its name. */
        MAIN,
        /** Once or more, and so much the main thing that a command line takes it without its name. */
        MAIN_REPEATED;

        /** Tells whether it may be given more than once. */
        public boolean isMany() {
            return this == REPEATED || this == MAIN_REPEATED;
        }

        /** Tells whether it must be given. */
        public boolean isRequired() {
            return this == REQUIRED || isMain();
        }

        /** Tells whether a command line takes it without its name. */
        public boolean isMain() {
            return this == MAIN || this == MAIN_REPEATED;
        }
    }

    /**
     * Reads a text.
     *
     * @throws ArgumentException naming this parameter and the text, if it is none of the kind or out of range
     */
    public T read(String text) {
        T value;
        try {
            value = kind.reader().apply(text);
        } catch (QuantitySyntaxException e) {
            throw ArgumentException.of(name, text, "expected " + e.expected());
        } catch (IllegalArgumentException e) {
            throw ArgumentException.of(name, text, e.getMessage());
        }
        if (!limits.allow(value, kind)) {
            throw ArgumentException.of(name, text, "must be " + limits.inWords());
        }
        return value;
    }
}
