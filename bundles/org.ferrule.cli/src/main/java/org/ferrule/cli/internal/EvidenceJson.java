/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import java.util.Locale;

import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.evidence.Chance;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.SharedSection;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** What the checks show, as JSON: lumens rounded down and what lies in them up, intervals outward. */
final class EvidenceJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private EvidenceJson() {
    }

    static ObjectNode of(Evidence evidence) {
        if (evidence instanceof SharedSection shared) {
            return shared(shared);
        }
        if (evidence instanceof BendRoom bend) {
            return bend(bend);
        }
        if (evidence instanceof FlowLeft flow) {
            return flow(flow);
        }
        if (evidence instanceof LengthChain chain) {
            return chain(chain);
        }
        return chance((Chance) evidence);
    }

    private static ObjectNode kind(String word) {
        return NODES.objectNode().put("kind", word);
    }

    private static ObjectNode shared(SharedSection shared) {
        ObjectNode node = kind("shared section").put("lumenSection", shared.lumenSection()).put("lumenStationMm",
                Millimetres.of(shared.lumenStation()));
        node.set("lumenDiameterMm", Millimetres.of(shared.lumen(), FLOOR));
        node.put("neededAtLeastMm", Millimetres.of(shared.neededAtLeast(), FLOOR)).put("neededMm",
                Millimetres.of(shared.needed(), CEILING));
        ArrayNode members = node.putArray("members");
        shared.members().forEach(m -> members.add(member(m)));
        return node;
    }

    private static ObjectNode member(SharedSection.Member member) {
        ObjectNode node = NODES.objectNode().put("device", member.device()).put("section", member.section())
                .put("part", word(member.part())).put("moving", member.moving());
        node.set("diameterMm", Millimetres.of(member.figure(), CEILING));
        return node.put("body", member.body()).put("filled", member.filled())
                .put("xMm", Millimetres.of(member.disc().xMm(), java.math.RoundingMode.HALF_EVEN))
                .put("yMm", Millimetres.of(member.disc().yMm(), java.math.RoundingMode.HALF_EVEN))
                .put("drawnDiameterMm", Millimetres.of(member.disc().diameter(), CEILING));
    }

    private static ObjectNode bend(BendRoom bend) {
        return kind("bend room").put("deviceSection", bend.deviceSection())
                .put("rigidLengthMm", Millimetres.of(bend.rigidLength(), CEILING))
                .put("deviceDiameterMm", Millimetres.of(bend.deviceDiameter(), CEILING))
                .put("freeLumenMm", bend.freeLumen().map(l -> Millimetres.of(l, FLOOR)).orElse(null))
                .put("bendRadiusMm", Millimetres.of(bend.bendRadius(), FLOOR)).put("vessel", bend.vessel())
                .put("longestMm", bend.longest().map(l -> Millimetres.of(l, FLOOR)).orElse(null))
                .put("leastRadiusMm", bend.leastRadius().map(l -> Millimetres.of(l, CEILING)).orElse(null));
    }

    private static ObjectNode flow(FlowLeft flow) {
        ObjectNode node = kind("flow left").put("lumenSection", flow.lumenSection()).put("lumenDiameterMm",
                Millimetres.of(flow.lumen(), FLOOR));
        ArrayNode devices = node.putArray("deviceDiametersMm");
        flow.devices().forEach(d -> devices.add(Millimetres.of(d, CEILING)));
        return node.put("low", Millimetres.of(flow.low(), FLOOR)).put("high", Millimetres.of(flow.high(), CEILING))
                .put("exact", flow.exact());
    }

    private static ObjectNode chain(LengthChain chain) {
        ObjectNode node = kind("length chain").put("question", word(chain.question()));
        ArrayNode links = node.putArray("links");
        chain.links().forEach(l -> links.add(NODES.objectNode().put("part", word(l.part())).put("device", l.device())
                .put("lengthMm", Millimetres.of(l.length(), FLOOR))));
        return node.put("marginMm", Millimetres.of(chain.margin(), FLOOR));
    }

    private static ObjectNode chance(Chance chance) {
        return kind("chance").put("deviceSection", chance.deviceSection()).put("lumenSection", chance.lumenSection())
                .put("meanMm", Millimetres.of(chance.meanMm(), FLOOR))
                .put("standardDeviationMm", Millimetres.of(chance.standardDeviationMm(), CEILING))
                .put("low", Millimetres.of(chance.low(), FLOOR)).put("high", Millimetres.of(chance.high(), CEILING));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
