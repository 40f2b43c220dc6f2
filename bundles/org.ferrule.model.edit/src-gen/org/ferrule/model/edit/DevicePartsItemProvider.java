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

import org.ferrule.model.DeviceParts;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage;

/**
 * This is the item provider adapter for a {@link org.ferrule.model.DeviceParts} object.
 * <!-- begin-user-doc -->
 * <!-- end-user-doc -->
 * @generated
 */
public class DevicePartsItemProvider extends SourcedItemProvider
{
	/**
	 * This constructs an instance from a factory and a notifier.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public DevicePartsItemProvider(AdapterFactory adapterFactory)
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

			addIdPropertyDescriptor(object);
			addNamePropertyDescriptor(object);
			addKindPropertyDescriptor(object);
			addMakerPropertyDescriptor(object);
			addModelPropertyDescriptor(object);
			addSizePropertyDescriptor(object);
			addEffectiveLengthPropertyDescriptor(object);
			addTakesWirePropertyDescriptor(object);
		}
		return itemPropertyDescriptors;
	}

	/**
	 * This adds a property descriptor for the Id feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addIdPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_id_feature"),
				 getString("_UI_DeviceParts_id_description"),
				 ModelPackage.Literals.DEVICE_PARTS__ID,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_IdentityPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Name feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addNamePropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_name_feature"),
				 getString("_UI_DeviceParts_name_description"),
				 ModelPackage.Literals.DEVICE_PARTS__NAME,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_IdentityPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Kind feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addKindPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_kind_feature"),
				 getString("_UI_DeviceParts_kind_description"),
				 ModelPackage.Literals.DEVICE_PARTS__KIND,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_IdentityPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Maker feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addMakerPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_maker_feature"),
				 getString("_UI_DeviceParts_maker_description"),
				 ModelPackage.Literals.DEVICE_PARTS__MAKER,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_IdentityPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Model feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addModelPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_model_feature"),
				 getString("_UI_DeviceParts_model_description"),
				 ModelPackage.Literals.DEVICE_PARTS__MODEL,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_IdentityPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Size feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addSizePropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_size_feature"),
				 getString("_UI_DeviceParts_size_description"),
				 ModelPackage.Literals.DEVICE_PARTS__SIZE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_IdentityPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Effective Length feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addEffectiveLengthPropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_effectiveLength_feature"),
				 getString("_UI_DeviceParts_effectiveLength_description"),
				 ModelPackage.Literals.DEVICE_PARTS__EFFECTIVE_LENGTH,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_GeometryPropertyCategory"),
				 null));
	}

	/**
	 * This adds a property descriptor for the Takes Wire feature.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected void addTakesWirePropertyDescriptor(Object object)
	{
		itemPropertyDescriptors.add
			(createItemPropertyDescriptor
				(((ComposeableAdapterFactory)adapterFactory).getRootAdapterFactory(),
				 getResourceLocator(),
				 getString("_UI_DeviceParts_takesWire_feature"),
				 getString("_UI_DeviceParts_takesWire_description"),
				 ModelPackage.Literals.DEVICE_PARTS__TAKES_WIRE,
				 true,
				 false,
				 false,
				 ItemPropertyDescriptor.GENERIC_VALUE_IMAGE,
				 getString("_UI_GeometryPropertyCategory"),
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
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__SECTIONS);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__LUMENS);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__MARKERS);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__BALLOON);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__STENT);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__CUTTER);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__TRANSDUCER);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__WIRE);
			childrenFeatures.add(ModelPackage.Literals.DEVICE_PARTS__CLAIMS);
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
		return org.ferrule.model.ObjectLabels.of(object, getString("_UI_DeviceParts_type"));
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

		switch (notification.getFeatureID(DeviceParts.class))
		{
			case ModelPackage.DEVICE_PARTS__ID:
			case ModelPackage.DEVICE_PARTS__NAME:
			case ModelPackage.DEVICE_PARTS__KIND:
			case ModelPackage.DEVICE_PARTS__MAKER:
			case ModelPackage.DEVICE_PARTS__MODEL:
			case ModelPackage.DEVICE_PARTS__SIZE:
			case ModelPackage.DEVICE_PARTS__EFFECTIVE_LENGTH:
			case ModelPackage.DEVICE_PARTS__TAKES_WIRE:
				fireNotifyChanged(new ViewerNotification(notification, notification.getNotifier(), false, true));
				return;
			case ModelPackage.DEVICE_PARTS__SECTIONS:
			case ModelPackage.DEVICE_PARTS__LUMENS:
			case ModelPackage.DEVICE_PARTS__MARKERS:
			case ModelPackage.DEVICE_PARTS__BALLOON:
			case ModelPackage.DEVICE_PARTS__STENT:
			case ModelPackage.DEVICE_PARTS__CUTTER:
			case ModelPackage.DEVICE_PARTS__TRANSDUCER:
			case ModelPackage.DEVICE_PARTS__WIRE:
			case ModelPackage.DEVICE_PARTS__CLAIMS:
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
				(ModelPackage.Literals.DEVICE_PARTS__SECTIONS,
				 ModelFactory.eINSTANCE.createShaftSection()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__LUMENS,
				 ModelFactory.eINSTANCE.createLumen()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__MARKERS,
				 ModelFactory.eINSTANCE.createMarker()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__BALLOON,
				 ModelFactory.eINSTANCE.createBalloon()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__STENT,
				 ModelFactory.eINSTANCE.createStent()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__CUTTER,
				 ModelFactory.eINSTANCE.createCutter()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__TRANSDUCER,
				 ModelFactory.eINSTANCE.createTransducer()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__WIRE,
				 ModelFactory.eINSTANCE.createWireTraits()));

		newChildDescriptors.add
			(createChildParameter
				(ModelPackage.Literals.DEVICE_PARTS__CLAIMS,
				 ModelFactory.eINSTANCE.createClaim()));
	}

}
