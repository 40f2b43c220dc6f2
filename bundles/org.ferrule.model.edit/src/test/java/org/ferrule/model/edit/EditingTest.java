/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.CommandParameter;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.eclipse.emf.edit.provider.ITreeItemContentProvider;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class EditingTest {

    private final ModelItemProviderAdapterFactory factory = new ModelItemProviderAdapterFactory();
    private final EditingDomain domain = new AdapterFactoryEditingDomain(factory, new BasicCommandStack());
    private final DeviceLibrary library = (DeviceLibrary) DocumentKind.DEVICES.create();
    private final Device device = ModelFactory.eINSTANCE.createDevice();

    @BeforeEach
    void fillLibrary() {
        library.getDevices().add(device);
    }

    @Test
    void showsADimensionAsItsText() {
        Dimension length = Dimension.parse("100 cm");
        device.setEffectiveLength(length);
        IItemPropertyDescriptor descriptor = descriptor(device, Literals.DEVICE_PARTS__EFFECTIVE_LENGTH);
        assertEquals("Effective length", descriptor.getDisplayName(device));
        assertEquals("100 cm", descriptor.getLabelProvider(device).getText(length));
        assertEquals("Geometry", descriptor.getCategory(device));
        assertTrue(descriptor.getDescription(device).startsWith("The effective length, from the distal tip"));
    }

    @Test
    void takesADimensionAsAText() {
        IItemPropertyDescriptor descriptor = descriptor(device, Literals.DEVICE_PARTS__TAKES_WIRE);
        descriptor.setPropertyValue(device, Dimension.lenient("0.014 in"));
        assertEquals("0.014 in", device.getTakesWire().text());
    }

    @Test
    void undoesASetValueToNone() {
        domain.getCommandStack().execute(SetCommand.create(domain, device, Literals.DEVICE_PARTS__TAKES_WIRE,
                Dimension.parse("0.014 in")));
        assertEquals("0.014 in", device.getTakesWire().text());
        domain.getCommandStack().undo();
        assertNull(device.getTakesWire());
    }

    @Test
    void undoesAWordToNone() {
        domain.getCommandStack().execute(SetCommand.create(domain, device, Literals.DEVICE_PARTS__KIND,
                DeviceKind.OTHER));
        assertTrue(device.isSetKind());
        domain.getCommandStack().undo();
        assertFalse(device.isSetKind());
    }

    @Test
    void unsetsAWord() {
        device.setKind(DeviceKind.SNARE);
        domain.getCommandStack().execute(SetCommand.create(domain, device, Literals.DEVICE_PARTS__KIND,
                SetCommand.UNSET_VALUE));
        assertFalse(device.isSetKind());
        domain.getCommandStack().undo();
        assertEquals(DeviceKind.SNARE, device.getKind());
    }

    @Test
    void addsAndListsChildren() {
        domain.getCommandStack().execute(AddCommand.create(domain, device, Literals.DEVICE_PARTS__SECTIONS,
                ModelFactory.eINSTANCE.createShaftSection()));
        ITreeItemContentProvider provider = (ITreeItemContentProvider) factory.adapt(device,
                ITreeItemContentProvider.class);
        assertEquals(List.copyOf(device.getSections()), List.copyOf(provider.getChildren(device)));
    }

    @Test
    void offersNewChildrenByName() {
        List<String> texts = domain.getNewChildDescriptors(device, null).stream()
                .map(d -> ((CommandParameter) d).getEValue().eClass().getName()).toList();
        assertTrue(texts.containsAll(List.of("ShaftSection", "Lumen", "Balloon", "Claim")), texts.toString());
    }

    private IItemPropertyDescriptor descriptor(EObject object, EStructuralFeature feature) {
        return ((IItemPropertySource) factory.adapt(object, IItemPropertySource.class)).getPropertyDescriptor(object,
                feature);
    }
}
