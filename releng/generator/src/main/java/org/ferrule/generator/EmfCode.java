/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.codegen.merge.java.JControlModel;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/** Runs EMF's code generator for the model and for its item providers. */
final class EmfCode {

    private final Path scratch;
    private final String model;
    private final String edit;

    EmfCode(Path scratch, String model, String edit) {
        this.scratch = scratch;
        this.model = model;
        this.edit = edit;
    }

    /** Brings the genmodel in line with the Ecore, saves it, generates both projects, and returns the Ecore. */
    EPackage generate() throws IOException {
        mapProject(model);
        mapProject(edit);
        GenModel genModel = load();
        genModel.reconcile();
        requireValid(genModel);
        genModel.eResource().save(null);
        genModel.setCanGenerate(true);
        describeProperties(genModel);
        Generator generator = new FreshGenerator();
        generator.getAdapterFactoryDescriptorRegistry().addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        generator.setInput(genModel);
        run(generator, genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE);
        run(generator, genModel, GenBaseGeneratorAdapter.EDIT_PROJECT_TYPE);
        return genModel.getGenPackages().get(0).getEcorePackage();
    }

    private GenModel load() {
        ResourceSet resources = new ResourceSetImpl();
        resources.getPackageRegistry().put(GenModelPackage.eNS_URI, GenModelPackage.eINSTANCE);
        var factories = resources.getResourceFactoryRegistry().getExtensionToFactoryMap();
        factories.put("ecore", new EcoreResourceFactoryImpl());
        factories.put("genmodel", new XMIResourceFactoryImpl());
        resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
        URI uri = URI.createPlatformResourceURI("/" + model + "/model/ferrule.genmodel", true);
        GenModel genModel = (GenModel) resources.getResource(uri, true).getContents().get(0);
        EcoreUtil.resolveAll(resources);
        return genModel;
    }

    private void mapProject(String name) throws IOException {
        Path folder = Files.createDirectories(scratch.resolve(name));
        EcorePlugin.getPlatformResourceMap().put(name, URI.createURI(folder.toUri().toString()));
    }

    private static void requireValid(GenModel genModel) {
        if (!genModel.validate().isOK()) {
            throw new IllegalStateException("the genmodel does not agree with the Ecore: " + genModel.validate());
        }
    }

    /** The tool tip of a property is the documentation of its feature. */
    private static void describeProperties(GenModel genModel) {
        genModel.getAllGenFeatures().forEach(f -> f.setPropertyDescription(f.getDocumentation()));
    }

    private static void run(Generator generator, GenModel genModel, Object projectType) {
        Diagnostic result = generator.generate(genModel, projectType, new BasicMonitor());
        if (result.getSeverity() >= Diagnostic.ERROR) {
            throw new IllegalStateException("generation failed: " + result.getChildren());
        }
    }

    /** Always writes new files and merges nothing into old ones, so that no Java parser is needed. */
    private static final class FreshGenerator extends Generator {

        private final JControlModel noMerging = new JControlModel();

        @Override
        public JControlModel getJControlModel() {
            return noMerging;
        }
    }
}
