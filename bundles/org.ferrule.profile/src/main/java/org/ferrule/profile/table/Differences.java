/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.figure.Figure;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.quantity.Length;

/**
 * How the devices of a comparison differ, quantity by quantity.
 *
 * @param rows without those of which no device has anything
 */
public record Differences(List<Row> rows) {

    /**
     * One quantity of all devices.
     *
     * @param quantity what it is about
     * @param values one for each device, in the order of the comparison
     */
    public record Row(Quantity quantity, List<Value> values) {
        public Row {
            values = List.copyOf(values);
        }

        /**
         * By how much the largest centre or length exceeds the smallest; absent when a value is not known, or is no
         * length.
         */
        public Optional<Length> spread() {
            List<Length> lengths = values.stream().filter(value -> !(value instanceof Value.None))
                    .flatMap(value -> length(value).stream()).toList();
            boolean all = lengths.size() == values.stream().filter(value -> !(value instanceof Value.None)).count();
            return all && lengths.size() > 1
                    ? Optional.of(lengths.stream().max(Length::compareTo).orElseThrow()
                            .minus(lengths.stream().min(Length::compareTo).orElseThrow()))
                    : Optional.empty();
        }

        private static Optional<Length> length(Value value) {
            if (value instanceof Value.Outer outer) {
                return Optional.of(outer.figure().centre());
            }
            if (value instanceof Value.Inner inner) {
                return Optional.of(inner.figure().centre());
            }
            if (value instanceof Value.Left left) {
                return Optional.of(left.clearance().nominal());
            }
            return value instanceof Value.Distance distance ? Optional.of(distance.length()) : Optional.empty();
        }
    }

    public Differences {
        rows = List.copyOf(rows);
    }

    /**
     * The table.
     *
     * @param wire of which is told what it leaves of each lumen; absent for none
     */
    public static Differences of(List<ProfiledDevice> devices, Optional<Figure> wire) {
        List<Row> rows = new ArrayList<>();
        List<DeviceValues> values = devices.stream().map(device -> new DeviceValues(device, wire)).toList();
        for (Quantity quantity : Quantity.values()) {
            List<Value> row = values.stream().map(device -> device.of(quantity)).toList();
            if (row.stream().anyMatch(value -> !(value instanceof Value.None))) {
                rows.add(new Row(quantity, row));
            }
        }
        return new Differences(rows);
    }

    /** The row of a quantity, if any device has something there. */
    public Optional<Row> row(Quantity quantity) {
        return rows.stream().filter(row -> row.quantity() == quantity).findFirst();
    }
}
