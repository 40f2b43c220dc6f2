/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Bend.Where;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** The conditions of a question in words, each of them: who reads the answers must know under what they hold. */
public final class ConditionWords {
    private final LengthWords words = new LengthWords(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private final Phrases phrases = Phrases.english();
    private final List<String> lines = new ArrayList<>();

    private ConditionWords() {
    }

    /** What else holds while a device passes, one condition each; nothing where it passes alone, straight and unused. */
    public static List<String> of(Conditions conditions) {
        ConditionWords words = new ConditionWords();
        words.add(conditions);
        return words.lines;
    }

    private void add(Conditions conditions) {
        conditions.inside().forEach(this::addOccupant);
        conditions.through().ifPresent(this::addThrough);
        for (Where where : Where.values()) {
            addBends(where, conditions.bends().stream().filter(b -> b.where() == where).toList());
        }
        if (conditions.afterInflation()) {
            say("afterInflation");
        }
    }

    private void addOccupant(Occupant occupant) {
        say("inside", name(occupant.device().device()), tip(occupant.tipAhead()), wire(occupant.device()),
                occupant.used() ? phrase("inside.used") : "");
    }

    private void addThrough(Through through) {
        say("through", name(through.extension().device()), tip(through.protrusion()));
    }

    private void addBends(Where where, List<Bend> bends) {
        if (!bends.isEmpty()) {
            say(where == Where.LUMEN ? "bend.lumen" : "bend.vessel",
                    bends.stream().map(this::bend).collect(Collectors.joining(", ")));
        }
    }

    private String bend(Bend bend) {
        String turn = bend.angleDegrees().map(a -> phrase("bend.angle", exactly(bend.radius()), a.toPlainString()))
                .orElseGet(() -> exactly(bend.radius()));
        return bend.vessel().map(v -> phrase("bend.wide", turn, exactly(v))).orElse(turn);
    }

    private String tip(Length ahead) {
        if (ahead.equals(Length.ZERO)) {
            return phrase("tip.level");
        }
        return phrase(ahead.isNegative() ? "tip.inside" : "tip.beyond", exactly(ahead.abs()));
    }

    /** A wire runs over nothing, and of a device that is not known there is nothing to say. */
    private String wire(ReadDevice device) {
        boolean overWire = device.device().kind() != DeviceKind.GUIDEWIRE && device.device().wireLumen().isPresent();
        return overWire ? device.wire().label().map(l -> phrase("inside.wire", words.plain(l)))
                .orElseGet(() -> phrase("inside.noWire")) : "";
    }

    private static String name(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }

    private static String exactly(Length length) {
        return LengthFormat.faithful(LengthUnit.MILLIMETRE).format(length);
    }

    private void say(String key, String... values) {
        lines.add(phrase(key, values));
    }

    private String phrase(String key, String... values) {
        return phrases.fill("condition." + key, values);
    }
}
