/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.growth;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.ferrule.balloon.ComplianceTable;
import org.ferrule.balloon.ComplianceTable.Row;
import org.ferrule.fit.device.Device;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;

/**
 * Growth curves of up to eight balloons.
 *
 * @param balloons in the order given
 */
public record GrowthComparison(List<BalloonGrowth> balloons) {
    /** More cannot be told apart in a plot. */
    public static final int MOST = 8;

    public GrowthComparison {
        balloons = List.copyOf(balloons);
        if (balloons.isEmpty() || balloons.size() > MOST) {
            throw new IllegalArgumentException("1 to " + MOST + " balloons can be compared, not " + balloons.size());
        }
    }

    /**
     * The growth of some devices.
     *
     * @throws IllegalArgumentException naming their number when it is not 1 to 8
     */
    public static GrowthComparison of(List<Device> devices) {
        return new GrowthComparison(devices.stream().map(BalloonGrowth::of).toList());
    }

    /** Whether there is any curve. */
    public boolean hasCurves() {
        return balloons.stream().anyMatch(balloon -> balloon.table().isPresent());
    }

    /** The unit in which most rows are printed. */
    public PressureUnit unit() {
        TreeMap<PressureUnit, Integer> counts = new TreeMap<>();
        rows().forEach(row -> counts.merge(row.pressure().unit(), 1, Integer::sum));
        return counts.entrySet().stream().max(Comparator.comparingInt(entry -> entry.getValue()))
                .map(entry -> entry.getKey()).orElse(PressureUnit.ATMOSPHERE);
    }

    /** Every pressure at which a table has a row, a nominal or a rated burst pressure, in rising order. */
    public List<Pressure> pressures() {
        TreeMap<BigDecimal, Pressure> found = new TreeMap<>();
        Stream<Pressure> named = balloons.stream().filter(balloon -> balloon.table().isPresent())
                .flatMap(balloon -> Stream.of(balloon.nominal(), balloon.ratedBurst())).flatMap(p -> p.stream());
        Stream.concat(rows().map(Row::pressure), named)
                .forEach(pressure -> found.putIfAbsent(pressure.pascals().stripTrailingZeros(), pressure));
        return List.copyOf(found.values());
    }

    private Stream<Row> rows() {
        return balloons.stream().flatMap(balloon -> balloon.table().stream()).map(ComplianceTable::rows)
                .flatMap(List::stream);
    }
}
