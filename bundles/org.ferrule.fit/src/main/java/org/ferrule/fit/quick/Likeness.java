/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.List;

/** All that the answers about a device depend on: devices in which it is equal are answered alike. */
final class Likeness {
    private final List<Object> facts;
    private final int hash;

    Likeness(Object... facts) {
        this.facts = List.of(facts);
        this.hash = this.facts.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Likeness that && hash == that.hash && facts.equals(that.facts);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
