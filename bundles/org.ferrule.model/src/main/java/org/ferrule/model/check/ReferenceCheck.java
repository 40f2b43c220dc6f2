/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.BenchResult;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceResolution;
import org.ferrule.model.Document;
import org.ferrule.model.Features;
import org.ferrule.model.Lumen;
import org.ferrule.model.ModelPackage.Literals;

/** References by id within a document lead somewhere: to sources, lines, and lumens of its own devices. */
final class ReferenceCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        Features.annotated(object.eClass(), "refers").forEach((feature, target) -> {
            if (object.eIsSet(feature)) {
                check(object, feature, target, examination);
            }
        });
    }

    private static void check(EObject object, EStructuralFeature feature, String target, Examination examination) {
        String id = String.valueOf(object.eGet(feature));
        Document document = (Document) EcoreUtil.getRootContainer(object);
        boolean known = switch (target) {
            case "Source" -> document.getSources().stream().anyMatch(source -> id.equals(source.getId()));
            case "DeviceLine" -> ((DeviceLibrary) document).getLines().stream().anyMatch(l -> id.equals(l.getId()));
            // a bench result may be about devices of other libraries, so an id that is not here proves nothing
            case "Lumen" -> hasLumen(document, (BenchResult) object);
            default -> true;
        };
        if (!known) {
            examination.add(ProblemCode.UNKNOWN_REFERENCE, object, feature, id, word(target));
        }
    }

    /** A lumen of an unknown device is not a second problem. */
    private static boolean hasLumen(Document document, BenchResult result) {
        return devices(document).filter(device -> device.getId() != null && device.getId().equals(result.getOuter()))
                .findFirst().map(device -> lumens(device).anyMatch(l -> result.getLumen().equals(l.getName())))
                .orElse(true);
    }

    private static Stream<Lumen> lumens(Device device) {
        return DeviceResolution.resolve(device).device().getLumens().stream();
    }

    private static Stream<Device> devices(Document document) {
        return ((DeviceLibrary) document).getDevices().stream();
    }

    private static String word(String target) {
        return target.equals(Literals.DEVICE_LINE.getName()) ? "line" : target.toLowerCase(Locale.ROOT);
    }
}
