/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.ExtensionPlace;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;

import picocli.CommandLine.Option;

/** The options that say what else holds while a device passes. */
public final class ConditionOptions {
    private static final String INSIDE = "--inside";
    private static final String THROUGH = "--through";
    private static final String BEND = "--bend";
    private static final String VESSEL = "vessel";
    private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);

    @Option(names = INSIDE, paramLabel = "ID[,wire=ID][,ahead=LENGTH][,used]", description = "A device that lies inside already; may be given several times. wire: the one that it runs over, by default the largest it is stated to take. ahead: how far its tip lies beyond the outer tip, negative when inside, by default 0. used: with its profile after use.")
    private List<String> inside = new ArrayList<>();

    @Option(names = THROUGH, paramLabel = "ID[#LUMEN][,protrusion=LENGTH]", description = "A guide extension in place, through which the device goes. protrusion: how far its tip lies beyond the outer tip, negative when inside, by default 0.")
    private String through;

    @Option(names = BEND, paramLabel = "RADIUS[,ANGLE][,vessel[=DIAMETER]]", description = "A bend on the way, such as \"20 mm,90\"; may be given several times. ANGLE: in degrees, by default longer than whatever passes. vessel: of the vessel, not of the lumen; with its DIAMETER the radius is told to which it must straighten.")
    private List<String> bends = new ArrayList<>();

    @Option(names = "--after-inflation", description = "The inner device goes in with its profile after use.")
    private boolean afterInflation;

    /** Whether something else lies in the lumen. */
    public boolean besideOthers() {
        return through != null || !inside.isEmpty();
    }

    /** The conditions that the options state. */
    public Conditions read(Catalogue catalogue, RuleSet rules) {
        return new Conditions(inside.stream().map(text -> occupant(text, catalogue, rules)).toList(),
                Optional.ofNullable(through).map(text -> through(text, catalogue, rules)),
                bends.stream().map(ConditionOptions::bend).toList(), afterInflation);
    }

    /** A device of the catalogue over a wire of it; without one, over the largest that it is stated to take. */
    public static ReadDevice device(Catalogue catalogue, RuleSet rules, String reference, Optional<String> wire) {
        Device device = catalogue.device(reference).device();
        return wire.map(w -> ReadDevice.over(device, rules,
                OwnWire.ofDevice(catalogue.device(w).device(), new FigureReader(rules))))
                .orElseGet(() -> ReadDevice.of(device, rules));
    }

    private static Occupant occupant(String text, Catalogue catalogue, RuleSet rules) {
        OptionParts parts = new OptionParts(INSIDE, text);
        Optional<String> wire = parts.take("wire");
        Length ahead = length(parts, "ahead");
        boolean used = parts.takeWord("used");
        parts.requireNothingLeft("wire=ID, ahead=LENGTH, used");
        return new Occupant(parts.read(parts.first(), id -> device(catalogue, rules, id, wire)), ahead, used);
    }

    private static Through through(String text, Catalogue catalogue, RuleSet rules) {
        OptionParts parts = new OptionParts(THROUGH, text);
        Length protrusion = length(parts, "protrusion");
        parts.requireNothingLeft("protrusion=LENGTH");
        return parts.read(parts.first(), reference -> {
            LumenReference lumen = LumenReference.parse(reference);
            return ExtensionPlace.of(device(catalogue, rules, lumen.device(), Optional.empty()), lumen, protrusion);
        });
    }

    private static Length length(OptionParts parts, String key) {
        return parts.take(key).map(text -> parts.read(text, Offset::parse).value()).orElse(Length.ZERO);
    }

    private static Bend bend(String text) {
        OptionParts parts = new OptionParts(BEND, text);
        Optional<Length> vessel = parts.take(VESSEL).map(width -> parts.read(width, Dimension::parse).label());
        Where where = parts.takeWord(VESSEL) || vessel.isPresent() ? Where.VESSEL : Where.LUMEN;
        Length radius = parts.read(parts.first(), Dimension::parse).label();
        Optional<BigDecimal> angle = parts.takeNext().map(degrees -> parts.read(degrees, BigDecimal::new));
        parts.requireNothingLeft("an angle in degrees, vessel, vessel=DIAMETER");
        if (angle.filter(a -> a.compareTo(FULL_TURN) > 0).isPresent()) {
            throw parts.error("an angle of " + angle.get().toPlainString() + " degrees is more than a full turn");
        }
        return parts.read(text, all -> new Bend(where, radius, angle, vessel));
    }
}
