/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has been read of a code so far; each part once only. */
final class CodeParts {

    /** A part that is not there yet, or is. */
    static final class Once<T> {
        private final String name;
        private Optional<T> value = Optional.empty();

        private Once(String name) {
            this.name = name;
        }

        void set(T newValue, CodeText text, int at) throws CodeException {
            if (value.isPresent()) {
                throw text.fault(CodeFault.DUPLICATE, at, name + " once only");
            }
            value = Optional.of(newValue);
        }
    }

    final Once<String> di = new Once<>("device identifier");
    final Once<String> lot = new Once<>("lot");
    final Once<String> serial = new Once<>("serial number");
    final Once<LocalDate> expiry = new Once<>("expiry");
    final Once<LocalDate> made = new Once<>("date of manufacture");
    final Once<Integer> quantity = new Once<>("quantity");
    final Once<Character> link = new Once<>("link character");
    private final List<Element> others = new ArrayList<>();

    void other(String id, String value) {
        others.add(new Element(id, value));
    }

    ProductCode code(Scheme scheme) {
        return new ProductCode(scheme, di.value, lot.value, serial.value, expiry.value, made.value, quantity.value,
                link.value, others);
    }
}
