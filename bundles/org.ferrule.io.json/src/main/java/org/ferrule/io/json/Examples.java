/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import org.eclipse.emf.ecore.EDataType;
import org.ferrule.model.ModelPackage;

/** Examples of texts with units, for messages. */
final class Examples {

    private Examples() {
    }

    static String of(EDataType type) {
        if (type == ModelPackage.Literals.PRESSURE) {
            return "\"12 atm\"";
        }
        return type == ModelPackage.Literals.OFFSET ? "\"-0.2 mm\"" : "\"1.78 mm\"";
    }
}
