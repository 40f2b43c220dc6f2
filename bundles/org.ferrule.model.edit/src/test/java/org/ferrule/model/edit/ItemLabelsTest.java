/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.ferrule.model.ModelPackage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ItemLabelsTest {

    private static final ModelItemProviderAdapterFactory FACTORY = new ModelItemProviderAdapterFactory();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Device        | id=a-6; name=Alder 6 Fr                  | a-6 \u2014 Alder 6 Fr
            Device        | id=a-6                                   | a-6
            Device        |                                          | Device
            DeviceLine    | name=Alder                               | Alder
            DeviceLibrary | title=Our devices                        | Our devices
            DeviceLibrary |                                          | Device library
            Source        | id=cat; title=Catalogue                  | cat \u2014 Catalogue
            ShaftSection  | name=tip; from=0 mm; to=9 mm; od=0.9 mm  | tip, 0.9 mm, 0 mm to 9 mm
            ShaftSection  | od=0.9 mm; to=9 mm                       | Shaft section, 0.9 mm, ? to 9 mm
            Lumen         | name=main; use=wire                      | main, wire
            Balloon       | diameter=2.5 mm; length=15 mm            | Balloon 2.5 mm \u00D7 15 mm
            Stent         | diameter=3 mm                            | Stent 3 mm
            Claim         | type=minimum lumen; value=0.070 in       | minimum lumen 0.070 in
            BenchResult   | inner=b; outer=a; result=did not pass    | b in a: did not pass
            Span          | figure=wire diameter                     | wire diameter of any device
            ClearanceRule | inner=snare; inner=coil; required=0.1 mm | snare, coil in any device: 0.1 mm
            ComplianceRow | pressure=8 atm; diameter=2.5 mm          | 8 atm: 2.5 mm
            ExtraKey      | key=shade                                | shade
            FlowLimit     | use=contrast; least=0.20                 | contrast: 0.20
            FlowLimit     |                                          | Limit of flow
            Allowance     | purpose=hub and valve; length=8 cm       | hub and valve: 8 cm
            RatioBand     | use=burr to vessel; high=0.6             | burr to vessel: ? to 0.6
            ChanceLimit   | greatest=0.01                            | Limit of chance 0.01
            Occupant      | device=a-6; wire=w-14                    | a-6 over w-14
            Occupant      |                                          | Occupant
            ThroughExtension | extension=e-6#main                    | e-6#main
            ThroughExtension |                                       | Through a guide extension
            Bend          | radius=20 mm                             | Bend 20 mm
            Cutter        | type=burr                                | Cutter
            Fact          | id=true-lumen; words=Seen                | true-lumen \u2014 Seen
            Technique     | id=small; name=Small balloon             | small \u2014 Small balloon
            Setup         | id=extension                             | extension
            Setup         |                                          | Set-up
            Role          | id=balloon; name=small balloon           | balloon \u2014 small balloon
            Need          | fact=true-lumen                          | true-lumen
            Need          | vessel=2.5 mm min                        | vessel 2.5 mm min
            Need          |                                          | Need
            Placement     | slot=second wire; role=wire              | second wire: wire
            PlannedTry    | minutes=5                                | Try of 5 min
            PlannedTry    |                                          | Try
            Prior         | successes=1; failures=2; label=assumed   | 1 to 2: assumed
            StatedFact    | fact=true-lumen; holds=false             | true-lumen: no
            StatedFact    | fact=true-lumen                          | true-lumen
            LoggedAttempt | move=small; outcome=given up             | small: given up
            UsedUnit      | item=sc-150; lot=A213                    | sc-150, lot A213
            UsedUnit      | item=sc-150                              | sc-150
            StockItem     | id=sc-150; name=Small                    | sc-150 \u2014 Small
            StockLot      | lot=A213; expiry=2027-02-28              | Lot A213, 2027-02-28
            StockLot      |                                          | Lot
            CaseDocument  |                                          | Case
            ShelfDocument | title=Cabinet 2                          | Cabinet 2
            DocumentHash  | file=house.rules.json; revision=5        | house.rules.json, revision 5
            """)
    void tellsObjectsApart(String type, String notation, String label) {
        assertEquals(label, label(object(type, notation == null ? "" : notation)));
    }

    @ParameterizedTest
    @MethodSource
    void hasALabelForEveryObject(EClass type) {
        assertFalse(label(EcoreUtil.create(type)).isEmpty());
    }

    static Stream<EClass> hasALabelForEveryObject() {
        return ModelPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance)
                .map(EClass.class::cast).filter(type -> !type.isAbstract());
    }

    private static String label(EObject object) {
        return ((IItemLabelProvider) FACTORY.adapt(object, IItemLabelProvider.class)).getText(object);
    }

    private static EObject object(String type, String notation) {
        EObject object = EcoreUtil.create((EClass) ModelPackage.eINSTANCE.getEClassifier(type));
        for (String part : notation.split(";\\s*")) {
            if (!part.isEmpty()) {
                String[] sides = part.split("=", 2);
                set(object, sides[0], sides[1]);
            }
        }
        return object;
    }

    @SuppressWarnings("unchecked")
    private static void set(EObject object, String name, String text) {
        EAttribute attribute = (EAttribute) object.eClass().getEStructuralFeature(name);
        Object value = EcoreUtil.createFromString(attribute.getEAttributeType(), text);
        if (attribute.isMany()) {
            ((List<Object>) object.eGet(attribute)).add(value);
        } else {
            object.eSet(attribute, value);
        }
    }
}
