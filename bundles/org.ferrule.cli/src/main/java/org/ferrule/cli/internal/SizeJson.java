/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.size.ChanceSize;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.engineering.size.PartnerSizes;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.Size;
import org.ferrule.fit.verdict.Verdict;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A required size as JSON: limits rounded to the careful side, and exactly in thirds of a nanometre. */
public final class SizeJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final RequiredSize required;
    private final RoundingMode rounding;

    public SizeJson(RequiredSize required) {
        this.required = required;
        this.rounding = Sizes.rounding(required.section().isBore());
    }

    /** The whole answer. */
    public ObjectNode write(Verdict keep, List<ChanceLine> chances) {
        Place place = required.section().place();
        ObjectNode node = NODES.objectNode().put("device", place.device().id()).put("section", place.name());
        node.put("of", required.section().isBore() ? "lumen" : "shaft").put("keep", keep.word());
        node.set("printed", size(required.section().printed()));
        node.set("limit", required.limit(keep, Phase.IN).map(this::size).orElse(null));
        node.set("limitComingOut", required.limit(keep, Phase.OUT).map(this::size).orElse(null));
        ArrayNode partners = node.putArray("partners");
        required.partners().forEach(p -> partners.add(partner(p)));
        if (!chances.isEmpty()) {
            ArrayNode lines = node.putArray("chances");
            chances.forEach(line -> lines.add(chance(line)));
        }
        return node;
    }

    private ObjectNode partner(PartnerSizes partner) {
        ObjectNode node = NODES.objectNode().put("outer", partner.question().outer().device().id())
                .put("lumen", partner.question().lumen().name()).put("inner", partner.question().inner().device().id())
                .put("phase", partner.phase().name().toLowerCase(Locale.ROOT));
        ArrayNode flips = node.putArray("flips");
        partner.flips().forEach(f -> flips.add(flip(f)));
        ArrayNode geometry = node.putArray("geometryFlips");
        partner.geometryFlips().forEach(f -> geometry.add(flip(f)));
        node.put("heldBy", partner.heldBy().map(h -> h.name().toLowerCase(Locale.ROOT).replace('_', ' ')).orElse(null));
        return node;
    }

    private ObjectNode flip(Flip flip) {
        ObjectNode node = NODES.objectNode().put("below", flip.below().word()).put("above", flip.above().word());
        node.set("last", size(flip.last()));
        node.set("first", size(flip.first()));
        return node;
    }

    private ObjectNode size(Size size) {
        return NODES.objectNode().put("distalMm", Millimetres.of(size.distal(), rounding))
                .put("proximalMm", Millimetres.of(size.proximal(), rounding))
                .put("distalThirdNanometres", size.distal().thirdNanometres())
                .put("proximalThirdNanometres", size.proximal().thirdNanometres());
    }

    private ObjectNode chance(ChanceLine line) {
        ObjectNode node = NODES.objectNode().put("partner", line.partner()).put("target", line.target());
        node.set("limit", line.found().map(ChanceSize::size).map(this::size).orElse(null));
        node.put("chance", line.found().map(ChanceSize::chance).orElse(null));
        return node.put("refused", line.found().isPresent() ? null : line.refused());
    }
}
