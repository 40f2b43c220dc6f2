/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Features;
import org.ferrule.model.FileReferences;

/** References to files are relative, with /, and end for the right kind of document. Whether they exist is not told. */
final class PathCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        Features.annotated(object.eClass(), "refers").keySet().forEach(attribute -> FileReferences.suffix(attribute)
                .ifPresent(suffix -> check(object, attribute, suffix, examination)));
    }

    private static void check(EObject object, EAttribute attribute, String suffix, Examination examination) {
        if (attribute.isMany()) {
            List<?> paths = (List<?>) object.eGet(attribute);
            for (int i = 0; i < paths.size(); i++) {
                if (!isPath((String) paths.get(i), suffix)) {
                    examination.addAt(ProblemCode.BAD_PATH, object, attribute, i, (String) paths.get(i), suffix);
                }
            }
        } else if (object.eGet(attribute) instanceof String path && !isPath(path, suffix)) {
            examination.add(ProblemCode.BAD_PATH, object, attribute, path, suffix);
        }
    }

    private static boolean isPath(String path, String suffix) {
        return path.endsWith(suffix) && !path.startsWith("/") && path.indexOf('\\') < 0 && path.indexOf(':') < 0;
    }
}
