/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.passage.FirstContacts.Meeting;
import org.ferrule.profile.CurveCrossing;
import org.ferrule.profile.LumenLine;
import org.ferrule.profile.LumenPassage;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.profile.curve.Mark;
import org.ferrule.profile.curve.Piece;
import org.ferrule.profile.table.Differences;
import org.ferrule.quantity.Length;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A comparison as JSON. Outer diameters are rounded up, inner ones down, at a nanometre. */
public final class CompareJson {
    private final ProfileComparison comparison;

    public CompareJson(ProfileComparison comparison) {
        this.comparison = comparison;
    }

    /** The whole comparison. */
    public ObjectNode write() {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("from", comparison.landmark().word())
                .put("rules", comparison.rules().title());
        node.set("wireMm", comparison.wire().map(wire -> Millimetres.of(wire, RoundingMode.CEILING)).orElse(null));
        ArrayNode devices = node.putArray("devices");
        comparison.devices().forEach(device -> device(devices.addObject(), device));
        ArrayNode lumens = node.putArray("lumens");
        comparison.lines().forEach(line -> line(lumens.addObject(), line));
        ArrayNode contacts = node.putArray("firstContacts");
        comparison.passages().forEach(passage -> passage(contacts.addObject(), passage));
        ArrayNode crossings = node.putArray("crossings");
        comparison.crossings().forEach(crossing -> crossing(crossings.addObject(), crossing));
        ArrayNode differences = node.putArray("differences");
        comparison.differences().rows().forEach(row -> row(differences.addObject(), row));
        return node;
    }

    private static void device(ObjectNode node, ProfiledDevice device) {
        node.put("device", device.id()).put("name", device.read().device().name());
        node.put("landmarkMm", device.landmark().map(Millimetres::of).orElse(null));
        ArrayNode curves = node.putArray("curves");
        device.curves().map(DeviceCurves::all).orElse(List.of()).forEach(curve -> curve(curves.addObject(), curve));
        ArrayNode marks = node.putArray("marks");
        device.curves().map(DeviceCurves::marks).orElse(List.of()).forEach(mark -> mark(marks.addObject(), mark));
    }

    private static void curve(ObjectNode node, Curve curve) {
        node.put("of", word(curve.kind())).put("lumen", curve.name().isEmpty() ? null : curve.name());
        RoundingMode rounding = curve.kind() == Curve.Kind.INNER ? RoundingMode.FLOOR : RoundingMode.CEILING;
        ArrayNode sections = node.putArray("sections");
        curve.pieces().forEach(piece -> piece(sections.addObject(), piece, rounding));
    }

    private static void piece(ObjectNode node, Piece piece, RoundingMode rounding) {
        node.put("section", piece.section()).put("fromMm", Millimetres.of(piece.from())).put("toMm",
                Millimetres.of(piece.to()));
        node.set("distalMm", piece.diameter().map(t -> Millimetres.of(t.start(), rounding)).orElse(null));
        node.set("proximalMm", piece.diameter().map(t -> Millimetres.of(t.end(), rounding)).orElse(null));
        node.put("assumed", piece.isAssumed()).put("source", piece.source().toString());
    }

    private static void mark(ObjectNode node, Mark mark) {
        node.put("mark", word(mark.kind())).put("name", mark.name()).put("fromMm", Millimetres.of(mark.from()))
                .put("toMm", Millimetres.of(mark.to()));
    }

    private static void line(ObjectNode node, LumenLine line) {
        node.put("device", line.outer().device().id()).put("lumen", line.lumen().name());
        node.set("narrowestMm", line.narrowest().map(f -> Millimetres.of(f, RoundingMode.FLOOR)).orElse(null));
    }

    private void passage(ObjectNode node, LumenPassage passage) {
        LumenLine line = comparison.lines().get(passage.line());
        node.put("device", comparison.devices().get(passage.device()).id()).put("outer", line.outer().device().id())
                .put("lumen", line.lumen().name());
        node.set("stop", meeting(passage.contacts().stop(), passage.stopsAt()));
        node.set("worstCase", meeting(passage.contacts().worst(), passage.worstAt()));
        node.put("unknown", passage.isUnknown());
    }

    private static ObjectNode meeting(Optional<Meeting> meeting, Optional<Length> station) {
        return meeting.map(m -> JsonNodeFactory.instance.objectNode().put("section", m.at().deviceSection())
                .put("stationMm", station.map(Millimetres::of).orElse(null))
                .put("deviceStationMm", Millimetres.of(m.at().deviceStation()))
                .put("lumenStationMm", Millimetres.of(m.at().lumenStation()))
                .put("worstMm", Millimetres.of(m.clearance().worst(), RoundingMode.FLOOR))
                .put("nominalMm", Millimetres.of(m.clearance().nominal(), RoundingMode.FLOOR))
                .put("bestMm", Millimetres.of(m.clearance().best(), RoundingMode.FLOOR))).orElse(null);
    }

    private void crossing(ObjectNode node, CurveCrossing crossing) {
        int larger = crossing.largerBeyond();
        int smaller = larger == crossing.first() ? crossing.second() : crossing.first();
        node.put("larger", comparison.devices().get(larger).id())
                .put("smaller", comparison.devices().get(smaller).id())
                .put("proximalToMm", Millimetres.of(crossing.crossing().station()))
                .put("uncertain", crossing.crossing().isUncertain());
    }

    private static void row(ObjectNode node, Differences.Row row) {
        node.put("quantity", word(row.quantity()));
        ArrayNode values = node.putArray("values");
        row.values().forEach(value -> values.add(CompareValues.json(value)));
        node.put("spreadMm", row.spread().map(Millimetres::of).orElse(null));
    }

    private static String word(Enum<?> constant) {
        return Names.word(constant.name());
    }
}
