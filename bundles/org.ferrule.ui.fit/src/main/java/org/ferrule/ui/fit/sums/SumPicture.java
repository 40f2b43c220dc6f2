/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.DetailValue;
import org.ferrule.fit.evidence.BendRoom;
import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.evidence.FlowLeft;
import org.ferrule.fit.evidence.LengthChain;
import org.ferrule.fit.evidence.LengthChain.Link;
import org.ferrule.fit.evidence.LengthChain.Part;
import org.ferrule.fit.evidence.LengthChain.Question;
import org.ferrule.fit.evidence.SharedSection;
import org.ferrule.fit.evidence.SharedSection.Member;
import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.RigidInBend;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** What there is to draw of an answer, in the same pictures as of the answers about pairs. */
final class SumPicture {

    private final Sum sum;
    private final Calculation answer;

    private SumPicture(Sum sum, Calculation answer) {
        this.sum = sum;
        this.answer = answer;
    }

    /** Returns what can be drawn; nothing for a calculator that has no picture, and where there is no value. */
    static Optional<Evidence> of(Sum sum) {
        return sum.answer().filter(answer -> answer.value().isPresent())
                .flatMap(answer -> new SumPicture(sum, answer).evidence());
    }

    private Optional<Evidence> evidence() {
        return switch (sum.calculator().name()) {
            case "pack" -> Optional.of(pack());
            case "bend" -> bend();
            case "flow" -> Optional.of(flow());
            case "reach" -> Optional.of(reach());
            default -> Optional.empty();
        };
    }

    private Length value() {
        return Length.of(answer.value().orElseThrow(), LengthUnit.MILLIMETRE);
    }

    private Optional<Length> given(String parameter) {
        return sum.all(parameter, Length.class).stream().findFirst();
    }

    private Evidence pack() {
        List<Member> members = new ArrayList<>();
        DetailValue.Items positions = (DetailValue.Items) answer.detail("positions").orElseThrow();
        for (DetailValue position : positions.values()) {
            List<Detail> disc = ((DetailValue.Group) position).values();
            Length diameter = Length.of(number(disc, "diameter"), LengthUnit.MILLIMETRE);
            int index = members.size();
            members.add(new Member("No. " + (index + 1), "", SharedSection.Part.SHAFT, false,
                    Figure.exactly(diameter), index, false, new PlacedDisc(number(disc, "x").doubleValue(),
                            number(disc, "y").doubleValue(), diameter)));
        }
        Length least = answer.interval().map(i -> Length.of(i.low(), LengthUnit.MILLIMETRE)).orElse(value());
        return new SharedSection("", Length.ZERO, Figure.exactly(value()), members, least, value());
    }

    private static BigDecimal number(List<Detail> details, String name) {
        return details.stream().filter(detail -> detail.name().equals(name)).map(Detail::value)
                .map(DetailValue.Number.class::cast).findFirst().orElseThrow().value();
    }

    /** What was not given is what was calculated. */
    private Optional<Evidence> bend() {
        Length device = given("device").orElseThrow();
        boolean lumenAsked = given("length").isPresent() && given("radius").isPresent();
        Length lumen = given("lumen").filter(l -> !lumenAsked || l.compareTo(device) > 0).orElseGet(this::value);
        Length radius = given("radius").orElseGet(this::value);
        Length length = given("length").orElseGet(this::value);
        if (length.equals(Length.ZERO) || radius.times(2).compareTo(lumen) < 0) {
            return Optional.empty();
        }
        return Optional.of(new BendRoom("", length, device, Optional.of(lumen), radius, false,
                Optional.of(RigidInBend.longest(lumen, device, radius)),
                RigidInBend.leastRadius(lumen, device, length)));
    }

    private Evidence flow() {
        double low = answer.interval().orElseThrow().low().doubleValue();
        double high = answer.interval().orElseThrow().high().doubleValue();
        boolean exact = answer.detail("exact").filter(new DetailValue.Flag(true)::equals).isPresent();
        return new FlowLeft("", given("lumen").orElseThrow(), sum.all("device", Length.class), low, high, exact);
    }

    private Evidence reach() {
        boolean byPort = answer.detail("limitedBy").filter(new DetailValue.Text("length")::equals).isEmpty();
        Stream<Link> tip = byPort ? link(Part.PORT_STATION, "port", 1)
                : Stream.of(link(Part.EFFECTIVE_LENGTH, "device", 1), link(Part.LUMEN_LENGTH, "guide", -1),
                        link(Part.HUB_AND_VALVE, "valve", -1)).flatMap(s -> s);
        return LengthChain.of(Question.REACH, Stream.of(tip, link(Part.TIP_TO_PLANE, "offset", -1),
                link(Part.REACH_ASKED, "needed", -1)).flatMap(s -> s).toArray(Link[]::new));
    }

    private Stream<Link> link(Part part, String parameter, int sign) {
        return given(parameter).filter(length -> !length.equals(Length.ZERO))
                .map(length -> new Link(part, "", length.times(sign))).stream();
    }
}
