/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.authority.Labels;
import org.ferrule.fit.authority.TakenWire;
import org.ferrule.fit.check.PortCheck;
import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.passage.Terms;
import org.ferrule.quantity.Length;

/** A lumen of an outer device as plain numbers, ready for many questions under the same terms. Immutable. */
public final class QuickOuter {
    final QuickBore bore;
    final BoreExtremes extremes;
    final int kind;
    final long kindBit;
    final QuickClaims.Partner partner;
    final QuickClaims claims;
    /** The kinds of devices of which its claims may speak. */
    final long claimKinds;
    final QuickLabel label;
    final int labelExtreme;
    final boolean labelComplete;
    final boolean hasCollar;
    /** Whether a side port must stay inside. */
    final boolean holdsPorts;
    /** Whether hub and valve take of the length of what goes in. */
    final boolean hasValve;
    final long length;
    /** How long an inner device must be; 0 hub to hub. */
    final long lengthNeeded;
    /** How much of the inner device is to lie beyond the distal opening; 0 hub to hub. */
    final long beyond;
    /** Ids of devices about which there are bench results with this one. */
    final Set<String> tried;
    final boolean isTried;
    private final Likeness likeness;

    private QuickOuter(ReadDevice read, Lumen lumen, Terms terms, Optional<String> name, Set<String> tried) {
        Device device = read.device();
        List<Stretch> stretches = read.bore(lumen);
        List<String> names = stretches.stream().map(Stretch::name).distinct().toList();
        boolean tipFirst = terms.direction() == Direction.TIP_FIRST;
        this.bore = new QuickBore(
                new FlatStretches(tipFirst ? stretches : Stretch.reversed(stretches, lumen.length()), names));
        this.extremes = new BoreExtremes(bore);
        this.kind = device.kind().ordinal();
        this.kindBit = QuickClaims.bit(device.kind());
        this.partner = new QuickClaims.Partner(kindBit, device.size(), name);
        List<Claim> all = new ArrayList<>(device.claims());
        TakenWire.claim(device, lumen).ifPresent(all::add);
        this.claims = QuickClaims.of(all, Claim.Type.LARGEST_DEVICE);
        this.claimKinds = claims.kinds();
        this.label = QuickLabel.of(Labels.ofLumen(lumen));
        this.labelExtreme = label.extreme();
        this.labelComplete = label.complete();
        this.hasCollar = lumen.opening() == Lumen.Opening.COLLAR;
        this.length = lumen.length().thirdNanometres();
        this.holdsPorts = PortCheck.isAskedIn(device.kind());
        this.hasValve = length != 0 && device.kind() != DeviceKind.INTRODUCER_SHEATH;
        boolean hubToHub = terms.reach().isEmpty() && tipFirst;
        this.beyond = hubToHub ? 0 : lumen.distalAt().plus(ahead(terms)).thirdNanometres();
        this.lengthNeeded = hubToHub ? 0 : length + beyond;
        this.tried = tried;
        this.isTried = !tried.isEmpty();
        this.likeness = new Likeness(bore, partner, claims, label, hasCollar, length, lengthNeeded, beyond, tried);
    }

    private static Length ahead(Terms terms) {
        return terms.reach().orElseGet(terms.rules()::wireAheadOrFail);
    }

    /** Makes a lumen ready; nothing when its numbers are too large. */
    static Optional<QuickOuter> of(ReadDevice read, Lumen lumen, Terms terms, Optional<String> name,
            Set<String> tried) {
        boolean holds = FlatStretches.holds(read.bore(lumen)) && FlatStretches.isNear(lumen.length())
                && FlatStretches.isNear(lumen.distalAt());
        return holds ? Optional.of(new QuickOuter(read, lumen, terms, name, tried)) : Optional.empty();
    }

    /** Whether there are bench results about the pair. */
    boolean wasTriedWith(QuickInner inner) {
        return isTried && inner.partner.id().filter(tried::contains).isPresent();
    }

    /**
     * The lower end of the diameter at the place that decides; only of a lumen that is known.
     *
     * @param atEntry whether that is the entry, and not where the lumen is narrowest
     */
    public int low(boolean atEntry) {
        return atEntry ? extremes.entryLow : extremes.low;
    }

    /** The centre of the diameter there. */
    public int centre(boolean atEntry) {
        return atEntry ? extremes.entryCentre : extremes.centre;
    }

    /** Place of the name of the section there among the different names of its stretches. */
    public int sectionName(boolean atEntry) {
        return atEntry ? extremes.entryName : extremes.name;
    }

    /** Whether another lumen has the same answers under the same terms, whatever is in it. */
    @Override
    public boolean equals(Object other) {
        return other instanceof QuickOuter that && likeness.equals(that.likeness);
    }

    @Override
    public int hashCode() {
        return likeness.hashCode();
    }
}
