/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

import java.util.List;
import java.util.Optional;

/**
 * Points of a score, of which some may not be known yet. Points are an order and not a chance.
 *
 * @param items what was asked for, with its points
 */
public record Points(List<Item> items) {

    /** Copies the list. */
    public Points {
        items = List.copyOf(items);
    }

    /**
     * What one trait adds.
     *
     * @param trait its word
     * @param least the points that it adds for certain, zero or more
     * @param most the points that it may add
     */
    public record Item(String trait, int least, int most) {

        /**
         * Checks the order.
         *
         * @throws IllegalArgumentException naming the points if they are negative or reversed
         */
        public Item {
            if (least < 0 || least > most) {
                throw new IllegalArgumentException(trait + " from " + least + " to " + most);
            }
        }

        /** A trait that is there, is not there, or of which nobody has said. */
        public static Item of(String trait, int worth, Optional<Boolean> present) {
            return new Item(trait, present.orElse(false) ? worth : 0, present.orElse(true) ? worth : 0);
        }

        /** A trait that adds so many points. */
        public static Item known(String trait, int points) {
            return new Item(trait, points, points);
        }

        /** Tells whether it is known how much it adds. */
        public boolean isKnown() {
            return least == most;
        }
    }

    /** Returns the points when all that is not known is not there. */
    public int least() {
        return items.stream().mapToInt(Item::least).sum();
    }

    /** Returns the points when all that is not known is there. */
    public int most() {
        return items.stream().mapToInt(Item::most).sum();
    }

    /** Returns the words of the traits of which it is not known how much they add. */
    public List<String> unknown() {
        return items.stream().filter(item -> !item.isKnown()).map(Item::trait).toList();
    }
}
