/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceFactoryImpl;

/** Makes {@link JsonResource}s. */
public final class JsonResourceFactory extends ResourceFactoryImpl {

    /** Lets the resource set read and write every {@code *.json} as a document, and write files safely. */
    public static void register(ResourceSet resources) {
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("json", new JsonResourceFactory());
        resources.getURIConverter().getURIHandlers().add(0, new AtomicFileHandler());
    }

    @Override
    public Resource createResource(URI uri) {
        return new JsonResource(uri);
    }
}
