/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.ferrule.balloon.Inflation.Point;
import org.ferrule.chart.page.Edition;
import org.ferrule.picture.Caption;
import org.ferrule.picture.Document;
import org.ferrule.picture.DocumentInfo;
import org.ferrule.picture.Picture;
import org.ferrule.profile.growth.BalloonGrowth;
import org.ferrule.profile.growth.GrowthComparison;
import org.ferrule.profile.growth.GrowthPlot;
import org.ferrule.profile.growth.GrowthWords;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Pressure;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Growth curves as text, as JSON and as a page with the plot. */
public final class GrowthReport {
    private static final double WIDTH_MM = 240;
    private static final double HEIGHT_MM = 150;

    private final GrowthComparison growth;
    private final ProfileWords words;
    private final GrowthWords sentences;
    private final List<Edition> libraries;

    /** A report in those words, on balloons of those libraries. */
    public GrowthReport(GrowthComparison growth, ProfileWords words, List<Edition> libraries) {
        this.growth = growth;
        this.words = words;
        this.sentences = new GrowthWords(growth, words);
        this.libraries = List.copyOf(libraries);
    }

    /** Whether every device has a curve. */
    public boolean isComplete() {
        return growth.balloons().stream().allMatch(balloon -> balloon.table().isPresent());
    }

    /** The plot with what it was drawn from below it. */
    public Document page() {
        OffsetDateTime now = OffsetDateTime.now();
        Picture plot = GrowthPlot.picture(growth, words, WIDTH_MM, HEIGHT_MM);
        String drawnFrom = words.phrases().fill("page.libraries", libraries.stream()
                .map(e -> e.revision().isEmpty() ? e.title()
                        : words.phrases().fill("page.edition", e.title(), e.revision()))
                .collect(Collectors.joining("; ")));
        Caption caption = Caption.of("", drawnFrom, now.toLocalDate().toString(),
                words.phrases().get("growth.caption"));
        return new Document(DocumentInfo.of(plot.title(), now), List.of(caption.below(plot)));
    }

    /** A row for each pressure, a column for each balloon. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < growth.balloons().size(); i++) {
            lines.add(sentences.refusal(i).orElse(sentences.pressures(i)));
        }
        List<List<String>> cells = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of(words.phrases().get("growth.table")));
        balloons().mapToObj(ProfileWords::letter).forEach(head::add);
        cells.add(head);
        for (Pressure pressure : growth.pressures()) {
            List<String> row = new ArrayList<>(List.of(sentences.pressure(pressure)));
            balloons().mapToObj(i -> sentences.at(i, pressure)).forEach(row::add);
            cells.add(row);
        }
        lines.add("");
        lines.addAll(TextTable.aligned(cells));
        lines.add("");
        lines.add(words.phrases().get("growth.between.note"));
        lines.add(words.phrases().get("growth.note"));
        lines.add(words.phrases().get("growth.caption"));
        return lines;
    }

    private IntStream balloons() {
        return IntStream.range(0, growth.balloons().size());
    }

    /** The printed rows, and nominal and rated burst pressure, of each balloon. */
    public ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        ArrayNode balloons = node.putArray("balloons");
        growth.balloons().forEach(balloon -> balloon(balloons.addObject(), balloon));
        return node;
    }

    private static void balloon(ObjectNode node, BalloonGrowth balloon) {
        node.put("device", balloon.id()).put("name", balloon.device().name());
        node.put("refused", balloon.refusal().map(refusal -> Names.word(refusal.name())).orElse(null));
        ArrayNode rows = node.putArray("printed");
        balloon.printed().forEach(point -> rows.add(point(point)));
        node.put("nominalPressure", balloon.nominal().map(Pressure::text).orElse(null));
        node.set("atNominal", balloon.atNominal().map(GrowthReport::point).orElse(null));
        node.put("ratedBurstPressure", balloon.ratedBurst().map(Pressure::text).orElse(null));
        node.set("atRatedBurst", balloon.atRatedBurst().map(GrowthReport::point).orElse(null));
    }

    private static ObjectNode point(Point point) {
        return JsonNodeFactory.instance.objectNode().put("pascals", point.pascals()).put("diameterMm",
                Millimetres.of(point.diameter(), RoundingMode.CEILING));
    }
}
