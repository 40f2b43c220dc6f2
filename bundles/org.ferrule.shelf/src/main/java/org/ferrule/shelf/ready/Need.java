/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What has to be there for one step.
 *
 * @param id what the need is called
 * @param count number of units, at least 1; units of several of the items may make it up
 * @param preferredItems ids of items, any of which will do; those named first are taken first
 * @param substituteItems ids of items that are a second choice
 */
public record Need(String id, int count, List<String> preferredItems, List<String> substituteItems) {

    /**
     * Checks the count and that no item stands twice.
     *
     * @throws IllegalArgumentException naming the need
     */
    public Need {
        preferredItems = List.copyOf(preferredItems);
        substituteItems = List.copyOf(substituteItems);
        if (count < 1) {
            throw new IllegalArgumentException("need \"" + id + "\" of " + count + " units");
        }
        Set<String> seen = new HashSet<>();
        Stream.concat(preferredItems.stream(), substituteItems.stream()).forEach(item -> {
            if (!seen.add(item)) {
                throw new IllegalArgumentException("need \"" + id + "\" names twice item \"" + item + "\"");
            }
        });
    }

    /** Returns the items in the order in which they are taken. */
    public List<String> items() {
        return Stream.concat(preferredItems.stream(), substituteItems.stream()).toList();
    }
}
