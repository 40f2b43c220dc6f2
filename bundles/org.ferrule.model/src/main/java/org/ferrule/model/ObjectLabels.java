/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import static org.ferrule.model.LabelText.joined;
import static org.ferrule.model.LabelText.number;
import static org.ferrule.model.LabelText.range;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.util.ModelSwitch;

/**
 * One line of text for each object: what it is called, else what it is, with the figures that tell it apart. Those of
 * techniques, cases and shelves are in {@link PlanLabels}.
 */
public final class ObjectLabels extends ModelSwitch<String> {

    private final String type;

    private ObjectLabels(String type) {
        this.type = type;
    }

    /**
     * Returns the label.
     *
     * @param object an object of a document
     * @param type what it is, in the reader's language; the label of an object that has no name and no figures
     */
    public static String of(Object object, String type) {
        String device = new ObjectLabels(type).doSwitch((EObject) object);
        String label = device == null ? new PlanLabels(type).doSwitch((EObject) object) : device;
        return label == null || label.isEmpty() ? type : label;
    }

    @Override
    public String caseDocument(Document document) {
        return document.getTitle();
    }

    @Override
    public String caseSource(Source source) {
        return joined(" \u2014 ", source.getId(), source.getTitle());
    }

    @Override
    public String caseDeviceParts(DeviceParts device) {
        return joined(" \u2014 ", device.getId(), device.getName());
    }

    @Override
    public String caseShaftSection(ShaftSection section) {
        return joined(", ", named(section.getName()), section.getOd(),
                range(section.getFrom(), section.getTo()));
    }

    @Override
    public String caseLumen(Lumen lumen) {
        return joined(", ", named(lumen.getName()), lumen.isSetUse() ? lumen.getUse().getLiteral() : null);
    }

    @Override
    public String caseLumenSection(LumenSection section) {
        return joined(", ", named(section.getName()), section.getId(),
                range(section.getFrom(), section.getTo()));
    }

    @Override
    public String caseSignOff(SignOff signOff) {
        return joined(", ", signOff.getBy(), signOff.getDate());
    }

    @Override
    public String caseSignedRow(SignedRow row) {
        return row.getOuter();
    }

    @Override
    public String caseMarker(Marker marker) {
        return joined(" ", type, marker.getAt());
    }

    @Override
    public String caseOval(Oval oval) {
        return joined(" ", type, joined(" \u00D7 ", oval.getWidth(), oval.getHeight()));
    }

    @Override
    public String caseBalloon(Balloon balloon) {
        return joined(" ", type, joined(" \u00D7 ", balloon.getDiameter(), balloon.getLength()));
    }

    @Override
    public String caseStent(Stent stent) {
        return joined(" ", type, joined(" \u00D7 ", stent.getDiameter(), stent.getLength()));
    }

    @Override
    public String caseComplianceRow(ComplianceRow row) {
        return joined(": ", row.getPressure(), row.getDiameter());
    }

    @Override
    public String caseClaim(Claim claim) {
        return joined(" ", claim.isSetType() ? claim.getType().getLiteral() : type, claim.getValue());
    }

    @Override
    public String caseBenchResult(BenchResult bench) {
        return joined(": ", joined(" in ", bench.getInner(), bench.getOuter()),
                bench.isSetResult() ? bench.getResult().getLiteral() : null);
    }

    @Override
    public String caseSpan(Span span) {
        return joined(" of ", span.isSetFigure() ? span.getFigure().getLiteral() : type, kinds(span.getKinds()));
    }

    @Override
    public String caseClearanceRule(ClearanceRule rule) {
        return joined(": ", kinds(rule.getInner()) + " in " + kinds(rule.getOuter()), rule.getRequired());
    }

    @Override
    public String caseFlowLimit(FlowLimit limit) {
        return joined(": ", limit.isSetUse() ? limit.getUse().getLiteral() : type, number(limit.getLeast()));
    }

    @Override
    public String caseAllowance(Allowance allowance) {
        return joined(": ", allowance.isSetPurpose() ? allowance.getPurpose().getLiteral() : type,
                allowance.getLength());
    }

    @Override
    public String caseRatioBand(RatioBand band) {
        return joined(": ", band.isSetUse() ? band.getUse().getLiteral() : type,
                range(number(band.getLow()), number(band.getHigh())));
    }

    @Override
    public String caseChanceLimit(ChanceLimit limit) {
        return joined(" ", type, number(limit.getGreatest()));
    }

    @Override
    public String caseOccupant(Occupant occupant) {
        return joined(" over ", named(occupant.getDevice()), occupant.getWire());
    }

    @Override
    public String caseThroughExtension(ThroughExtension through) {
        return named(through.getExtension());
    }

    @Override
    public String caseBend(Bend bend) {
        return joined(" ", type, bend.getRadius());
    }

    @Override
    public String caseVesselPath(VesselPath path) {
        return named(path.getName());
    }

    @Override
    public String caseVesselSegment(VesselSegment segment) {
        return joined(", ", named(segment.getName()), segment.getLength());
    }

    @Override
    public String caseLesion(Lesion lesion) {
        return named(lesion.getName());
    }

    @Override
    public String caseExtraKey(ExtraKey extra) {
        return extra.getKey();
    }

    private String named(String name) {
        return name == null || name.isEmpty() ? type : name;
    }

    private static String kinds(List<DeviceKind> kinds) {
        return kinds.isEmpty() ? "any device"
                : kinds.stream().map(DeviceKind::getLiteral).collect(Collectors.joining(", "));
    }
}
