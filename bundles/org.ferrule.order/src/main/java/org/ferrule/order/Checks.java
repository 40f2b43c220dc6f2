/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What several records refuse alike. */
final class Checks {

    private Checks() {
    }

    static void cost(String of, double cost) {
        if (!(cost >= 0 && cost < Double.POSITIVE_INFINITY)) {
            throw new OrderException("the cost of " + of + " must be a number of 0 or more, not " + cost);
        }
    }

    static void id(String id) {
        if (id.isBlank()) {
            throw new OrderException("an option or a set-up has no id");
        }
    }

    /** Everything that is needed is there, and nothing needs itself in the end. */
    static void noCircle(Map<String, Set<String>> needs) {
        Map<String, Set<String>> open = new HashMap<>();
        needs.forEach((id, needed) -> {
            known(id, needed, needs.keySet());
            open.put(id, new HashSet<>(needed));
        });
        while (!open.isEmpty()) {
            Set<String> free = new HashSet<>();
            open.forEach((id, needed) -> {
                if (needed.isEmpty()) {
                    free.add(id);
                }
            });
            if (free.isEmpty()) {
                throw new OrderException("each of these needs another of them first: " + open.keySet());
            }
            open.keySet().removeAll(free);
            open.values().forEach(needed -> needed.removeAll(free));
        }
    }

    static void known(String id, Set<String> needed, Set<String> there) {
        Set<String> missing = new HashSet<>(needed);
        missing.removeAll(there);
        if (!missing.isEmpty()) {
            throw new OrderException(id + " needs " + missing + ", which is not there");
        }
    }
}
