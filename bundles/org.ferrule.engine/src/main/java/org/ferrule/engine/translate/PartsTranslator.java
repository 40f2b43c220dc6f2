/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.Parts.BalloonPart;
import org.ferrule.fit.device.Parts.ComplianceRow;
import org.ferrule.fit.device.Parts.CutterPart;
import org.ferrule.fit.device.Parts.MarkerPart;
import org.ferrule.fit.device.Parts.StentPart;
import org.ferrule.model.Balloon;
import org.ferrule.model.Cutter;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Marker;
import org.ferrule.model.Stent;
import org.ferrule.model.WireTraits;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;

/** Copies the parts that give a device its abilities. A figure that cannot be read counts as not stated. */
final class PartsTranslator {
    private PartsTranslator() {
    }

    static Parts translate(DeviceParts device) {
        return new Parts(Optional.ofNullable(device.getBalloon()).map(PartsTranslator::balloon),
                Optional.ofNullable(device.getStent()).map(PartsTranslator::stent),
                Optional.ofNullable(device.getCutter()).map(PartsTranslator::cutter),
                Optional.ofNullable(device.getTransducer()).flatMap(t -> Stations.of(t.getAt())),
                device.getMarkers().stream().flatMap(m -> marker(m).stream()).toList(),
                Optional.ofNullable(device.getWire()).filter(WireTraits::isSetExtendable)
                        .map(WireTraits::isExtendable));
    }

    private static BalloonPart balloon(Balloon balloon) {
        return new BalloonPart(DeviceTranslator.text(balloon.getSection()), readable(balloon.getDiameter()),
                readable(balloon.getLength()), readable(balloon.getNominalPressure()),
                readable(balloon.getRatedBurstPressure()), compliance(balloon));
    }

    /** A table with a row that cannot be read is not used: what lies between its other rows is not known. */
    private static List<ComplianceRow> compliance(Balloon balloon) {
        boolean whole = balloon.getCompliance().stream().allMatch(
                row -> readable(row.getPressure()).isPresent() && readable(row.getDiameter()).isPresent());
        return whole ? balloon.getCompliance().stream()
                .map(row -> new ComplianceRow(row.getPressure(), row.getDiameter())).toList() : List.of();
    }

    private static StentPart stent(Stent stent) {
        return new StentPart(DeviceTranslator.text(stent.getSection()), readable(stent.getDiameter()),
                readable(stent.getLength()), readable(stent.getMaximumDiameter()));
    }

    private static CutterPart cutter(Cutter cutter) {
        return new CutterPart(DeviceTranslator.text(cutter.getSection()), readable(cutter.getDiameter()));
    }

    private static Optional<MarkerPart> marker(Marker marker) {
        Optional<Length> width = Stations.of(marker.getWidth());
        return Stations.of(marker.getAt()).map(at -> new MarkerPart(at, width));
    }

    private static Optional<Dimension> readable(Dimension printed) {
        return Optional.ofNullable(printed).filter(Dimension::readable);
    }

    private static Optional<Pressure> readable(Pressure printed) {
        return Optional.ofNullable(printed).filter(Pressure::readable);
    }
}
