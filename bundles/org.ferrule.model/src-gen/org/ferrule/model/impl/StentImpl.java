/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.Stent;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stent</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.StentImpl#getSection <em>Section</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StentImpl#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StentImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StentImpl#getMaximumDiameter <em>Maximum Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StentImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StentImpl#getStrutThickness <em>Strut Thickness</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StentImpl extends SourcedImpl implements Stent
{
	/**
	 * The default value of the '{@link #getSection() <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSection()
	 * @generated
	 * @ordered
	 */
	protected static final String SECTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSection() <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSection()
	 * @generated
	 * @ordered
	 */
	protected String section = SECTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getDiameter() <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDiameter() <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiameter()
	 * @generated
	 * @ordered
	 */
	protected Dimension diameter = DIAMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Dimension length = LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaximumDiameter() <em>Maximum Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension MAXIMUM_DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaximumDiameter() <em>Maximum Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaximumDiameter()
	 * @generated
	 * @ordered
	 */
	protected Dimension maximumDiameter = MAXIMUM_DIAMETER_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final String MATERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected String material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getStrutThickness() <em>Strut Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrutThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension STRUT_THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStrutThickness() <em>Strut Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStrutThickness()
	 * @generated
	 * @ordered
	 */
	protected Dimension strutThickness = STRUT_THICKNESS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StentImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.STENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSection()
	{
		return section;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSection(String newSection)
	{
		String oldSection = section;
		section = newSection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STENT__SECTION, oldSection, section));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getDiameter()
	{
		return diameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiameter(Dimension newDiameter)
	{
		Dimension oldDiameter = diameter;
		diameter = newDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STENT__DIAMETER, oldDiameter, diameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getLength()
	{
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Dimension newLength)
	{
		Dimension oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STENT__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getMaximumDiameter()
	{
		return maximumDiameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaximumDiameter(Dimension newMaximumDiameter)
	{
		Dimension oldMaximumDiameter = maximumDiameter;
		maximumDiameter = newMaximumDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STENT__MAXIMUM_DIAMETER, oldMaximumDiameter, maximumDiameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMaterial()
	{
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(String newMaterial)
	{
		String oldMaterial = material;
		material = newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STENT__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getStrutThickness()
	{
		return strutThickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrutThickness(Dimension newStrutThickness)
	{
		Dimension oldStrutThickness = strutThickness;
		strutThickness = newStrutThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STENT__STRUT_THICKNESS, oldStrutThickness, strutThickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.STENT__SECTION:
				return getSection();
			case ModelPackage.STENT__DIAMETER:
				return getDiameter();
			case ModelPackage.STENT__LENGTH:
				return getLength();
			case ModelPackage.STENT__MAXIMUM_DIAMETER:
				return getMaximumDiameter();
			case ModelPackage.STENT__MATERIAL:
				return getMaterial();
			case ModelPackage.STENT__STRUT_THICKNESS:
				return getStrutThickness();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.STENT__SECTION:
				setSection((String)newValue);
				return;
			case ModelPackage.STENT__DIAMETER:
				setDiameter((Dimension)newValue);
				return;
			case ModelPackage.STENT__LENGTH:
				setLength((Dimension)newValue);
				return;
			case ModelPackage.STENT__MAXIMUM_DIAMETER:
				setMaximumDiameter((Dimension)newValue);
				return;
			case ModelPackage.STENT__MATERIAL:
				setMaterial((String)newValue);
				return;
			case ModelPackage.STENT__STRUT_THICKNESS:
				setStrutThickness((Dimension)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.STENT__SECTION:
				setSection(SECTION_EDEFAULT);
				return;
			case ModelPackage.STENT__DIAMETER:
				setDiameter(DIAMETER_EDEFAULT);
				return;
			case ModelPackage.STENT__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case ModelPackage.STENT__MAXIMUM_DIAMETER:
				setMaximumDiameter(MAXIMUM_DIAMETER_EDEFAULT);
				return;
			case ModelPackage.STENT__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case ModelPackage.STENT__STRUT_THICKNESS:
				setStrutThickness(STRUT_THICKNESS_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.STENT__SECTION:
				return SECTION_EDEFAULT == null ? section != null : !SECTION_EDEFAULT.equals(section);
			case ModelPackage.STENT__DIAMETER:
				return DIAMETER_EDEFAULT == null ? diameter != null : !DIAMETER_EDEFAULT.equals(diameter);
			case ModelPackage.STENT__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case ModelPackage.STENT__MAXIMUM_DIAMETER:
				return MAXIMUM_DIAMETER_EDEFAULT == null ? maximumDiameter != null : !MAXIMUM_DIAMETER_EDEFAULT.equals(maximumDiameter);
			case ModelPackage.STENT__MATERIAL:
				return MATERIAL_EDEFAULT == null ? material != null : !MATERIAL_EDEFAULT.equals(material);
			case ModelPackage.STENT__STRUT_THICKNESS:
				return STRUT_THICKNESS_EDEFAULT == null ? strutThickness != null : !STRUT_THICKNESS_EDEFAULT.equals(strutThickness);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (section: ");
		result.append(section);
		result.append(", diameter: ");
		result.append(diameter);
		result.append(", length: ");
		result.append(length);
		result.append(", maximumDiameter: ");
		result.append(maximumDiameter);
		result.append(", material: ");
		result.append(material);
		result.append(", strutThickness: ");
		result.append(strutThickness);
		result.append(')');
		return result.toString();
	}

} //StentImpl
