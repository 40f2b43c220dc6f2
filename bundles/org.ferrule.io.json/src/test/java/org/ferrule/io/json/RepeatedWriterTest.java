/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.ModelFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Writing a document again gives what writing it anew gives, if its changes were told. */
class RepeatedWriterTest {

    private static final JsonDocuments DOCUMENTS = new JsonDocuments();

    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void writesWhatHasChanged(long seed) {
        Document document = new RandomDocuments(seed).next();
        RepeatedWriter writer = new RepeatedWriter(document);
        document.eAdapters().add(new Teller(writer));
        Random random = new Random(seed);
        assertArrayEquals(DOCUMENTS.write(document), writer.write());
        for (int i = 0; i < 10; i++) {
            change(document, random);
            assertArrayEquals(DOCUMENTS.write(document), writer.write());
        }
    }

    @Test
    void remembersWhatWasNotToldToHaveChanged() {
        DeviceLibrary library = ModelFactory.eINSTANCE.createDeviceLibrary();
        Device device = ModelFactory.eINSTANCE.createDevice();
        library.getDevices().add(device);
        RepeatedWriter writer = new RepeatedWriter(library);
        byte[] before = writer.write();
        device.setName("other");
        assertArrayEquals(before, writer.write());
        writer.changed(device);
        assertFalse(Arrays.equals(before, writer.write()));
    }

    @Test
    void forgetsWhatHasLeftTheDocument() {
        DeviceLibrary library = ModelFactory.eINSTANCE.createDeviceLibrary();
        Device device = ModelFactory.eINSTANCE.createDevice();
        library.getDevices().add(device);
        RepeatedWriter writer = new RepeatedWriter(library);
        String before = new String(writer.write());
        library.getDevices().clear();
        writer.write();
        device.setName("other");
        library.getDevices().add(device);
        assertNotEquals(before, new String(writer.write()));
    }

    /** One removes an object, moves one within its list, or gives a text. */
    private static void change(Document document, Random random) {
        List<EObject> objects = new ArrayList<>();
        EcoreUtil.getAllContents(document, true).forEachRemaining(object -> objects.add((EObject) object));
        if (objects.isEmpty()) {
            document.setTitle("title " + random.nextInt());
            return;
        }
        EObject object = objects.get(random.nextInt(objects.size()));
        switch (random.nextInt(3)) {
            case 0 -> EcoreUtil.remove(object);
            case 1 -> toFront(object);
            default -> name(object, random);
        }
    }

    @SuppressWarnings("unchecked")
    private static void toFront(EObject object) {
        EStructuralFeature feature = object.eContainingFeature();
        if (feature.isMany()) {
            List<EObject> siblings = (List<EObject>) object.eContainer().eGet(feature);
            siblings.remove(object);
            siblings.add(0, object);
        }
    }

    private static void name(EObject object, Random random) {
        object.eClass().getEAllAttributes().stream()
                .filter(attribute -> !attribute.isMany()
                        && attribute.getEAttributeType().getInstanceClass() == String.class
                        && !attribute.getName().matches("key|json"))
                .findAny().ifPresent(attribute -> object.eSet(attribute, "text " + random.nextInt()));
    }

    /** Tells the writer of each change. */
    private static final class Teller extends EContentAdapter {

        private final RepeatedWriter writer;

        Teller(RepeatedWriter writer) {
            this.writer = writer;
        }

        @Override
        public void notifyChanged(Notification notification) {
            super.notifyChanged(notification);
            if (notification.getNotifier() instanceof EObject object) {
                writer.changed(object);
            }
            if (notification.getNewValue() instanceof EObject object) {
                writer.changed(object);
            }
        }
    }
}
