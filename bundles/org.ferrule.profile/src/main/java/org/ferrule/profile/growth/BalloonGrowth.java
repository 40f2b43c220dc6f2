/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.growth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.balloon.ComplianceTable;
import org.ferrule.balloon.ComplianceTable.Row;
import org.ferrule.balloon.Inflation;
import org.ferrule.balloon.Inflation.Point;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Parts.BalloonPart;
import org.ferrule.quantity.Pressure;

/**
 * How a balloon grows with pressure, by its printed table and no farther: neither beyond the table nor beyond the rated
 * burst pressure.
 *
 * @param device the balloon
 * @param table as printed; absent where there is none that can be used
 * @param nominal the nominal pressure, if stated
 * @param refusal why there is no curve; absent when there is a table
 * @param detail of a table that contradicts itself, in which rows; empty otherwise
 */
public record BalloonGrowth(Device device, Optional<ComplianceTable> table, Optional<Pressure> nominal,
        Optional<Refusal> refusal, String detail) {

    /** Why a device has no growth curve. */
    public enum Refusal {
        /** It has no balloon. */
        NO_BALLOON,
        /** Its papers have no table, or one with a figure that cannot be read. */
        NO_TABLE,
        /** Its table contradicts itself. */
        CONTRADICTORY_TABLE,
        /** The whole table lies beyond the rated burst pressure. */
        BEYOND_RATED_BURST
    }

    public BalloonGrowth {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(nominal, "nominal");
        Objects.requireNonNull(refusal, "refusal");
        Objects.requireNonNull(detail, "detail");
    }

    /** The growth of a device. */
    public static BalloonGrowth of(Device device) {
        Optional<BalloonPart> balloon = device.parts().balloon();
        if (balloon.isEmpty()) {
            return refused(device, Refusal.NO_BALLOON, "");
        }
        List<Row> rows = balloon.get().compliance().stream().map(row -> new Row(row.pressure(), row.diameter()))
                .toList();
        return rows.isEmpty() ? refused(device, Refusal.NO_TABLE, "") : read(device, balloon.get(), rows);
    }

    private static BalloonGrowth read(Device device, BalloonPart balloon, List<Row> rows) {
        try {
            ComplianceTable table = new ComplianceTable(rows, balloon.ratedBurstPressure());
            boolean beyond = table.diameterAt(rows.get(0).pressure()) instanceof Inflation.Refused;
            return beyond ? refused(device, Refusal.BEYOND_RATED_BURST, "")
                    : new BalloonGrowth(device, Optional.of(table), balloon.nominalPressure(), Optional.empty(), "");
        } catch (IllegalArgumentException e) {
            return refused(device, Refusal.CONTRADICTORY_TABLE, e.getMessage());
        }
    }

    private static BalloonGrowth refused(Device device, Refusal refusal, String detail) {
        return new BalloonGrowth(device, Optional.empty(), Optional.empty(), Optional.of(refusal), detail);
    }

    /** The id of the device. */
    public String id() {
        return device.id();
    }

    /** Its name, or its id where it has none. */
    public String name() {
        return device.name().isEmpty() ? device.id() : device.name();
    }

    /** The rated burst pressure, if stated. */
    public Optional<Pressure> ratedBurst() {
        return table.flatMap(ComplianceTable::ratedBurst);
    }

    /** The rows of the table, up to the rated burst pressure. */
    public List<Point> printed() {
        return table.map(known -> known.rows().stream().map(Row::pressure).flatMap(p -> at(p).stream()).toList())
                .orElse(List.of());
    }

    /** The corners of the curve: the printed rows, and its end at the rated burst pressure where that lies between rows. */
    public List<Point> corners() {
        List<Point> corners = new ArrayList<>(printed());
        Optional<Point> end = atRatedBurst();
        boolean beyondLast = end.isPresent() && !corners.isEmpty()
                && end.get().pascals().compareTo(corners.get(corners.size() - 1).pascals()) > 0;
        if (beyondLast) {
            corners.add(end.get());
        }
        return corners;
    }

    /** At the nominal pressure, where that is stated and lies in the table. */
    public Optional<Point> atNominal() {
        return nominal.flatMap(this::at);
    }

    /** At the rated burst pressure, where that is stated and lies in the table. */
    public Optional<Point> atRatedBurst() {
        return ratedBurst().flatMap(this::at);
    }

    /** At a pressure, where the table tells. */
    public Optional<Point> at(Pressure pressure) {
        return table.map(known -> known.diameterAt(pressure)).filter(Point.class::isInstance).map(Point.class::cast);
    }

    /** Whether the table has a row at that pressure, so that the diameter is printed and not worked out. */
    public boolean isPrinted(BigDecimal pascals) {
        return table.map(known -> known.rows().stream()
                .anyMatch(row -> row.pressure().pascals().compareTo(pascals) == 0)).orElse(false);
    }
}
