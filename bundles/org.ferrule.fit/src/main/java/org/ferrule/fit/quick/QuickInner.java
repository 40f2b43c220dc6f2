/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.check.PortCheck;
import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.quantity.Length;

/** An inner device as plain numbers, ready for many questions under the same terms. Immutable. */
public final class QuickInner {
    /** A length that nobody states. */
    static final long NOT_STATED = -1;

    /** Puts those side by side of which a whole block often has the same verdict. */
    public static final Comparator<QuickInner> BY_SIZE = Comparator
            .<QuickInner, Boolean>comparing(i -> !i.isUsual()).thenComparing(i -> i.kind)
            .thenComparing(i -> i.claims.kinds()).thenComparing(QuickInner::claimedLumen)
            .thenComparing(i -> i.isUsual() ? i.in.high(i.in.top()) : 0);

    /** Outlines that nobody describes are unknown from the end that leads. */
    private static final List<Stretch> NOT_DESCRIBED = List.of(Stretch.unknown("", Length.ZERO, Length.ZERO,
            Reason.of(ReasonCode.MISSING_FIGURE), SourceRef.NONE));

    final QuickShaft in;
    /** After use; the same object where use changes nothing. */
    final QuickShaft out;
    final int kind;
    final long kindBit;
    final QuickClaims.Partner partner;
    final QuickClaims claims;
    final LabelLadder labels;
    final boolean isWire;
    final int wire;
    final boolean deploys;
    final long statedLength;
    final long insertableLength;
    /** What is found of its side port where that must stay inside: a verdict. */
    final int port;
    private final Likeness likeness;

    private QuickInner(ReadDevice read, Terms terms, Optional<String> name) {
        Device device = read.device();
        this.in = shaft(read, Phase.IN, terms);
        QuickShaft after = shaft(read, Phase.OUT, terms);
        this.out = after.stretches().isSameAs(in.stretches()) ? in : after;
        this.kind = device.kind().ordinal();
        this.kindBit = QuickClaims.bit(device.kind());
        this.partner = new QuickClaims.Partner(kindBit, device.size(), name);
        this.claims = QuickClaims.of(device.claims(), Claim.Type.MINIMUM_LUMEN);
        this.labels = new LabelLadder(device.sections(), terms.direction());
        this.isWire = device.kind() == DeviceKind.GUIDEWIRE;
        this.wire = read.wire().label().map(QuickLabel::number).orElse(QuickLabel.NONE);
        this.deploys = device.deploys();
        this.statedLength = number(device.statedLength());
        this.insertableLength = number(device.insertableLength());
        this.port = terms.reach().filter(reach -> terms.direction() == Direction.TIP_FIRST)
                .flatMap(reach -> device.sidePort().map(lumen -> PortCheck.verdict(lumen, reach).ordinal()))
                .orElse(Passing.FITS);
        this.likeness = new Likeness(in, out, partner, claims, labels, wire, deploys, statedLength, insertableLength,
                port);
    }

    /** Whether all is known of it that lets it pass whole lumens. */
    private boolean isUsual() {
        return statedLength != NOT_STATED && in.isKnown() && out.isKnown();
    }

    private int claimedLumen() {
        return claims.comparingOnly(isWire, wire).map(QuickClaims.Comparing::value).orElse(0);
    }

    private static long number(Optional<Length> length) {
        return length.map(Length::thirdNanometres).orElse(NOT_STATED);
    }

    private static QuickShaft shaft(ReadDevice read, Phase phase, Terms terms) {
        List<Stretch> outline = read.outline(phase).isEmpty() ? NOT_DESCRIBED : read.outline(phase);
        List<String> names = outline.stream().map(Stretch::name).distinct().toList();
        Length whole = read.device().insertableLength().orElse(Length.ZERO);
        return new QuickShaft(new FlatStretches(
                terms.direction() == Direction.TIP_FIRST ? outline : Stretch.reversed(outline, whole), names));
    }

    /** Makes a device ready; nothing when its numbers are too large. */
    static Optional<QuickInner> of(ReadDevice read, Terms terms, Optional<String> name) {
        boolean holds = FlatStretches.holds(read.outline(Phase.IN)) && FlatStretches.holds(read.outline(Phase.OUT))
                && read.device().insertableLength().filter(l -> !FlatStretches.isNear(l)).isEmpty();
        return holds ? Optional.of(new QuickInner(read, terms, name)) : Optional.empty();
    }

    /** Whether another device has the same answers under the same terms, whatever lies around it. */
    @Override
    public boolean equals(Object other) {
        return other instanceof QuickInner that && likeness.equals(that.likeness);
    }

    @Override
    public int hashCode() {
        return likeness.hashCode();
    }
}
