/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.edit;


import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.notify.AdapterFactory;
import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EStructuralFeature;

import org.eclipse.emf.edit.provider.ComposeableAdapterFactory;
import org.eclipse.emf.edit.provider.IItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ItemPropertyDescriptor;
import org.eclipse.emf.edit.provider.ViewerNotification;

import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.TechniqueLibrary;

/**
 * This is the item provider adapter for a {@link org.ferrule.model.TechniqueLibrary} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class TechniqueLibraryItemProvider extends DocumentItemProvider
{
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public TechniqueLibraryItemProvider(AdapterFactory adapterFactory)
	{
		super(adapterFactory);
	}

	/**
	 * This returns the property descriptors for the adapted class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public List<IItemPropertyDescriptor> getPropertyDescriptors(Object object)
	{
		if (itemPropertyDescriptors == null)
		{
			super.getPropertyDescriptors(object);

			addSituationPropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Situation feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSituationPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_TechniqueLibrary_situation_feature"),
				 getString("_UI_TechniqueLibrary_situation_description"),
				 ModelPackage.Literals.TECHNIQUE_LIBRARY__SITUATION,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 null,
				 null));
	}

	/**
	 * This specifies how to implement {@link #getChildren} and is used to deduce an appropriate feature for an
	 * {@link org.eclipse.emf.edit.command.AddCommand}, {@link org.eclipse.emf.edit.command.RemoveCommand} or
	 * {@link org.eclipse.emf.edit.command.MoveCommand} in {@link #createCommand}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Collection<? extends EStructuralFeature> getChildrenFeatures(Object object)
	{
		if (childrenFeatures == null)
		{
			super.getChildrenFeatures(object);
			childrenFeatures.add(ModelPackage.Literals.TECHNIQUE_LIBRARY__FACTS);
			childrenFeatures.add(ModelPackage.Literals.TECHNIQUE_LIBRARY__SETUPS);
			childrenFeatures.add(ModelPackage.Literals.TECHNIQUE_LIBRARY__TECHNIQUES);
			childrenFeatures.add(ModelPackage.Literals.TECHNIQUE_LIBRARY__BAIL_OUT);
			childrenFeatures.add(ModelPackage.Literals.TECHNIQUE_LIBRARY__STOP_RULES);
		}
		return childrenFeatures;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EStructuralFeature getChildFeature(Object object, Object child)
	{
		// Check the type of the specified child object and return the proper feature to use for
		// adding (see {@link AddCommand}) it as a child.

		return super.getChildFeature(object, child);
	}

	/**
	 * This returns TechniqueLibrary.gif.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object getImage(Object object)
	{
		return overlayImage(object, getResourceLocator().getImage("full/obj16/TechniqueLibrary"));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected boolean shouldComposeCreationImage()
	{
		return true;
	}

	/**
	 * This returns the label text for the adapted class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText(Object object)
	{
		return org.ferrule.model.ObjectLabels.of(object, getString("_UI_TechniqueLibrary_type"));
	}


	/**
	 * This handles model notifications by calling {@link #updateChildren} to update any cached
	 * children and by creating a viewer notification, which it passes to {@link #fireNotifyChanged}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void notifyChanged(Notification notification)
	{
		updateChildren(notification);

		switch (notification.getFeatureID(TechniqueLibrary.class))
		{
			case ModelPackage.TECHNIQUE_LIBRARY__SITUATION:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case ModelPackage.TECHNIQUE_LIBRARY__FACTS:
			case ModelPackage.TECHNIQUE_LIBRARY__SETUPS:
			case ModelPackage.TECHNIQUE_LIBRARY__TECHNIQUES:
			case ModelPackage.TECHNIQUE_LIBRARY__BAIL_OUT:
			case ModelPackage.TECHNIQUE_LIBRARY__STOP_RULES:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), true, false));
				return;
		}
		super.notifyChanged(notification);
	}

	/**
	 * This adds {@link org.eclipse.emf.edit.command.CommandParameter}s describing the children
	 * that can be created under this object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected void collectNewChildDescriptors(Collection<Object> newChildDescriptors, Object object)
	{
		super.collectNewChildDescriptors(newChildDescriptors, object);

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.TECHNIQUE_LIBRARY__FACTS,
				 ModelFactory.eINSTANCE.createFact()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.TECHNIQUE_LIBRARY__SETUPS,
				 ModelFactory.eINSTANCE.createSetup()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.TECHNIQUE_LIBRARY__TECHNIQUES,
				 ModelFactory.eINSTANCE.createTechnique()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.TECHNIQUE_LIBRARY__BAIL_OUT,
				 ModelFactory.eINSTANCE.createRole()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.TECHNIQUE_LIBRARY__STOP_RULES,
				 ModelFactory.eINSTANCE.createStopRule()));
	}

}
