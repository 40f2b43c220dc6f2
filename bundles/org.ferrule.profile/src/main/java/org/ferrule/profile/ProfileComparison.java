/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FirstContacts;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.profile.DeviceReading.LumenReading;
import org.ferrule.profile.curve.Crossings;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.profile.curve.Piece;
import org.ferrule.profile.curve.Reading;
import org.ferrule.profile.table.Differences;
import org.ferrule.quantity.Length;

/**
 * Two to eight devices laid over each other along their length. Stations count from a landmark that all devices have;
 * one that lacks it, or of which nobody states where it is, stays in the table but has no curves.
 */
public final class ProfileComparison {
    /** The fewest devices. */
    public static final int LEAST = 2;
    /** The most devices: more cannot be told apart in a plot. */
    public static final int MOST = 8;

    private final List<ProfiledDevice> devices;
    private final Landmark landmark;
    private final List<LumenLine> lines;
    private final Optional<Figure> wire;
    private final RuleSet rules;
    private final List<LumenPassage> passages;
    private final List<CurveCrossing> crossings;
    private final Differences differences;

    private ProfileComparison(List<ProfiledDevice> devices, Landmark landmark, List<LumenLine> lines,
            Optional<Figure> wire, RuleSet rules) {
        this.devices = devices;
        this.landmark = landmark;
        this.lines = lines;
        this.wire = wire;
        this.rules = rules;
        this.passages = passages(devices, lines, rules);
        this.crossings = crossings(devices);
        this.differences = Differences.of(devices, wire);
    }

    /**
     * Compares devices.
     *
     * @param devices two to eight, read by {@code rules}
     * @param landmark from which stations count
     * @param lines lumens that the devices are to pass; may be empty
     * @param wire the diameter of a wire, to tell what it leaves of each device's lumen; absent for none
     * @param rules in force
     * @throws IllegalArgumentException naming the number of devices when it is out of range
     */
    public static ProfileComparison of(List<ReadDevice> devices, Landmark landmark, List<LumenLine> lines,
            Optional<Figure> wire, RuleSet rules) {
        Objects.requireNonNull(landmark, "landmark");
        Objects.requireNonNull(wire, "wire");
        if (devices.size() < LEAST || devices.size() > MOST) {
            throw new IllegalArgumentException(
                    LEAST + " to " + MOST + " devices can be compared, not " + devices.size());
        }
        return new ProfileComparison(devices.stream().map(read -> ProfiledDevice.of(read, landmark)).toList(),
                landmark, List.copyOf(lines), wire, rules);
    }

    private static List<LumenPassage> passages(List<ProfiledDevice> devices, List<LumenLine> lines, RuleSet rules) {
        List<LumenPassage> passages = new ArrayList<>();
        for (int device = 0; device < devices.size(); device++) {
            ProfiledDevice inner = devices.get(device);
            for (int line = 0; line < lines.size(); line++) {
                FitQuestion question = new FitQuestion(lines.get(line).outer(), lines.get(line).lumen(), inner.read(),
                        Direction.TIP_FIRST, Optional.empty(), rules);
                passages.add(new LumenPassage(device, line, FirstContacts.of(question), inner.landmark()));
            }
        }
        return List.copyOf(passages);
    }

    private static List<CurveCrossing> crossings(List<ProfiledDevice> devices) {
        List<CurveCrossing> crossings = new ArrayList<>();
        for (int i = 0; i < devices.size(); i++) {
            for (int j = i + 1; j < devices.size(); j++) {
                addCrossings(devices, i, j, crossings);
            }
        }
        return List.copyOf(crossings);
    }

    private static void addCrossings(List<ProfiledDevice> devices, int i, int j, List<CurveCrossing> crossings) {
        Optional<Curve> first = devices.get(i).curves().map(DeviceCurves::outer);
        Optional<Curve> second = devices.get(j).curves().map(DeviceCurves::outer);
        if (first.isPresent() && second.isPresent()) {
            Crossings.of(first.get(), second.get()).forEach(c -> crossings.add(new CurveCrossing(i, j, c)));
        }
    }

    /** The devices in the order given. */
    public List<ProfiledDevice> devices() {
        return devices;
    }

    /** From which stations count. */
    public Landmark landmark() {
        return landmark;
    }

    /** The lumens that the devices are to pass. */
    public List<LumenLine> lines() {
        return lines;
    }

    /** The wire of which the table tells what it leaves of each lumen. */
    public Optional<Figure> wire() {
        return wire;
    }

    /** The rule set in force. */
    public RuleSet rules() {
        return rules;
    }

    /** What happens to each device in each lumen, device by device. */
    public List<LumenPassage> passages() {
        return passages;
    }

    /** Where outer diameters cross, pair by pair, each from distal to proximal. */
    public List<CurveCrossing> crossings() {
        return crossings;
    }

    /** The table of differences. */
    public Differences differences() {
        return differences;
    }

    /** The most distal station of any curve, from the landmark; zero when there is none. */
    public Length from() {
        return ends().map(Piece::from).min(Length::compareTo).orElse(Length.ZERO);
    }

    /** The most proximal station of any curve, from the landmark; zero when there is none. */
    public Length to() {
        return ends().map(Piece::to).max(Length::compareTo).orElse(Length.ZERO);
    }

    private Stream<Piece> ends() {
        return devices.stream().flatMap(device -> device.curves().stream()).flatMap(all -> all.all().stream())
                .flatMap(curve -> curve.pieces().stream());
    }

    /**
     * What all curves say of one station.
     *
     * @param station from the landmark, proximal is positive
     */
    public List<DeviceReading> valuesAt(Length station) {
        return IntStream.range(0, devices.size()).mapToObj(i -> reading(i, station)).toList();
    }

    private DeviceReading reading(int number, Length station) {
        ProfiledDevice device = devices.get(number);
        if (device.curves().isEmpty()) {
            return new DeviceReading(number, Optional.empty(), new Reading.Unknown("", List.of()), Optional.empty(),
                    List.of(), List.of());
        }
        DeviceCurves curves = device.curves().get();
        List<LumenReading> inner = curves.inner().stream()
                .map(curve -> new LumenReading(curve.name(), curve.at(station)))
                .filter(lumen -> !(lumen.reading() instanceof Reading.Beyond)).toList();
        Optional<Reading> withWire = curves.withWire().map(curve -> curve.at(station))
                .filter(reading -> !(reading instanceof Reading.Beyond));
        return new DeviceReading(number, device.landmark().map(station::plus), curves.outer().at(station), withWire,
                inner, curves.marks().stream().filter(mark -> mark.from().compareTo(station) <= 0
                        && mark.to().compareTo(station) >= 0).toList());
    }
}
