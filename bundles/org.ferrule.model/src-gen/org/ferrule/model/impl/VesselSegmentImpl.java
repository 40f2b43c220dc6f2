/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.VesselSegment;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Vessel Segment</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.VesselSegmentImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.impl.VesselSegmentImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.ferrule.model.impl.VesselSegmentImpl#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.VesselSegmentImpl#getBendRadius <em>Bend Radius</em>}</li>
 *   <li>{@link org.ferrule.model.impl.VesselSegmentImpl#getBendAngleDegrees <em>Bend Angle Degrees</em>}</li>
 * </ul>
 *
 * @generated
 */
public class VesselSegmentImpl extends ElementImpl implements VesselSegment
{
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

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
	 * The default value of the '{@link #getBendRadius() <em>Bend Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendRadius()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension BEND_RADIUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBendRadius() <em>Bend Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendRadius()
	 * @generated
	 * @ordered
	 */
	protected Dimension bendRadius = BEND_RADIUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getBendAngleDegrees() <em>Bend Angle Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendAngleDegrees()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal BEND_ANGLE_DEGREES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBendAngleDegrees() <em>Bend Angle Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendAngleDegrees()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal bendAngleDegrees = BEND_ANGLE_DEGREES_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected VesselSegmentImpl()
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
		return ModelPackage.Literals.VESSEL_SEGMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName)
	{
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VESSEL_SEGMENT__NAME, oldName, name));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VESSEL_SEGMENT__LENGTH, oldLength, length));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VESSEL_SEGMENT__DIAMETER, oldDiameter, diameter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getBendRadius()
	{
		return bendRadius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBendRadius(Dimension newBendRadius)
	{
		Dimension oldBendRadius = bendRadius;
		bendRadius = newBendRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VESSEL_SEGMENT__BEND_RADIUS, oldBendRadius, bendRadius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getBendAngleDegrees()
	{
		return bendAngleDegrees;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBendAngleDegrees(BigDecimal newBendAngleDegrees)
	{
		BigDecimal oldBendAngleDegrees = bendAngleDegrees;
		bendAngleDegrees = newBendAngleDegrees;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.VESSEL_SEGMENT__BEND_ANGLE_DEGREES, oldBendAngleDegrees, bendAngleDegrees));
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
			case ModelPackage.VESSEL_SEGMENT__NAME:
				return getName();
			case ModelPackage.VESSEL_SEGMENT__LENGTH:
				return getLength();
			case ModelPackage.VESSEL_SEGMENT__DIAMETER:
				return getDiameter();
			case ModelPackage.VESSEL_SEGMENT__BEND_RADIUS:
				return getBendRadius();
			case ModelPackage.VESSEL_SEGMENT__BEND_ANGLE_DEGREES:
				return getBendAngleDegrees();
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
			case ModelPackage.VESSEL_SEGMENT__NAME:
				setName((String)newValue);
				return;
			case ModelPackage.VESSEL_SEGMENT__LENGTH:
				setLength((Dimension)newValue);
				return;
			case ModelPackage.VESSEL_SEGMENT__DIAMETER:
				setDiameter((Dimension)newValue);
				return;
			case ModelPackage.VESSEL_SEGMENT__BEND_RADIUS:
				setBendRadius((Dimension)newValue);
				return;
			case ModelPackage.VESSEL_SEGMENT__BEND_ANGLE_DEGREES:
				setBendAngleDegrees((BigDecimal)newValue);
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
			case ModelPackage.VESSEL_SEGMENT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case ModelPackage.VESSEL_SEGMENT__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case ModelPackage.VESSEL_SEGMENT__DIAMETER:
				setDiameter(DIAMETER_EDEFAULT);
				return;
			case ModelPackage.VESSEL_SEGMENT__BEND_RADIUS:
				setBendRadius(BEND_RADIUS_EDEFAULT);
				return;
			case ModelPackage.VESSEL_SEGMENT__BEND_ANGLE_DEGREES:
				setBendAngleDegrees(BEND_ANGLE_DEGREES_EDEFAULT);
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
			case ModelPackage.VESSEL_SEGMENT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case ModelPackage.VESSEL_SEGMENT__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case ModelPackage.VESSEL_SEGMENT__DIAMETER:
				return DIAMETER_EDEFAULT == null ? diameter != null : !DIAMETER_EDEFAULT.equals(diameter);
			case ModelPackage.VESSEL_SEGMENT__BEND_RADIUS:
				return BEND_RADIUS_EDEFAULT == null ? bendRadius != null : !BEND_RADIUS_EDEFAULT.equals(bendRadius);
			case ModelPackage.VESSEL_SEGMENT__BEND_ANGLE_DEGREES:
				return BEND_ANGLE_DEGREES_EDEFAULT == null ? bendAngleDegrees != null : !BEND_ANGLE_DEGREES_EDEFAULT.equals(bendAngleDegrees);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", length: ");
		result.append(length);
		result.append(", diameter: ");
		result.append(diameter);
		result.append(", bendRadius: ");
		result.append(bendRadius);
		result.append(", bendAngleDegrees: ");
		result.append(bendAngleDegrees);
		result.append(')');
		return result.toString();
	}

} //VesselSegmentImpl
