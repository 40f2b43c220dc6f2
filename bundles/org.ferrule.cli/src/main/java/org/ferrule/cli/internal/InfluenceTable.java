/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.quantity.Dimension;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Ranked influences as lines of text and as JSON. */
public final class InfluenceTable {
    private static final String FORMAT = "%7s  %7s  %7s  %s";

    private InfluenceTable() {
    }

    /** A title and a line for each. */
    public static List<String> lines(List<Influence> ranked) {
        List<String> lines = ranked.stream().map(InfluenceTable::line).collect(Collectors.toList());
        lines.add(0, String.format(FORMAT, "changes", "decides", "settles", "what"));
        return lines;
    }

    private static String line(Influence influence) {
        String settles = influence.settles().isPresent() ? String.valueOf(influence.settles().getAsInt()) : "-";
        Place place = influence.place();
        String source = place.source().isNone() ? "" : " [" + place.source() + "]";
        return String.format(FORMAT, influence.changes(), influence.decides(), settles,
                place.device().id() + ", " + kind(place) + name(place) + printed(place) + source);
    }

    private static String kind(Place place) {
        if (place instanceof Place.Shaft) {
            return "shaft";
        }
        if (place instanceof Place.Bore) {
            return "lumen";
        }
        return place instanceof Place.Wire ? "wire beside" : "claim";
    }

    private static String name(Place place) {
        if (place instanceof Place.Statement statement) {
            return statement.claim().map(c -> " \"" + word(c.type()) + "\"").orElse(" \"takes wire\"");
        }
        return place.name().isEmpty() ? "" : " \"" + place.name() + "\"";
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String printed(Place place) {
        String texts = place.printed().stream().map(Dimension::text).collect(Collectors.joining(" to "));
        boolean silent = texts.isEmpty() && place instanceof Place.Statement;
        return silent ? "" : ": " + (texts.isEmpty() ? "not stated" : texts);
    }

    /** An array, the weightiest first. */
    public static ArrayNode json(List<Influence> ranked) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        for (Influence influence : ranked) {
            Place place = influence.place();
            ObjectNode node = array.addObject().put("device", place.device().id()).put("of", kind(place));
            node.put("section", place.name());
            ArrayNode printed = node.putArray("printed");
            place.printed().forEach(d -> printed.add(d.text()));
            node.put("source", place.source().toString()).put("changes", influence.changes()).put("decides",
                    influence.decides());
            node.put("settles", influence.settles().isPresent() ? influence.settles().getAsInt() : null);
        }
        return array;
    }
}
