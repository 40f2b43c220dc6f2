/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.model.ModelPackage;

import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Pressure;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Balloon</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.BalloonImpl#getSection <em>Section</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BalloonImpl#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BalloonImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BalloonImpl#getNominalPressure <em>Nominal Pressure</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BalloonImpl#getRatedBurstPressure <em>Rated Burst Pressure</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BalloonImpl#getCompliance <em>Compliance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BalloonImpl extends SourcedImpl implements Balloon
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
	 * The default value of the '{@link #getNominalPressure() <em>Nominal Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominalPressure()
	 * @generated
	 * @ordered
	 */
	protected static final Pressure NOMINAL_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNominalPressure() <em>Nominal Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominalPressure()
	 * @generated
	 * @ordered
	 */
	protected Pressure nominalPressure = NOMINAL_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getRatedBurstPressure() <em>Rated Burst Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedBurstPressure()
	 * @generated
	 * @ordered
	 */
	protected static final Pressure RATED_BURST_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRatedBurstPressure() <em>Rated Burst Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRatedBurstPressure()
	 * @generated
	 * @ordered
	 */
	protected Pressure ratedBurstPressure = RATED_BURST_PRESSURE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCompliance() <em>Compliance</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCompliance()
	 * @generated
	 * @ordered
	 */
	protected EList<ComplianceRow> compliance;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BalloonImpl()
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
		return ModelPackage.Literals.BALLOON;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BALLOON__SECTION, oldSection, section));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BALLOON__DIAMETER, oldDiameter, diameter));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BALLOON__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Pressure getNominalPressure()
	{
		return nominalPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNominalPressure(Pressure newNominalPressure)
	{
		Pressure oldNominalPressure = nominalPressure;
		nominalPressure = newNominalPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BALLOON__NOMINAL_PRESSURE, oldNominalPressure, nominalPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Pressure getRatedBurstPressure()
	{
		return ratedBurstPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedBurstPressure(Pressure newRatedBurstPressure)
	{
		Pressure oldRatedBurstPressure = ratedBurstPressure;
		ratedBurstPressure = newRatedBurstPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BALLOON__RATED_BURST_PRESSURE, oldRatedBurstPressure, ratedBurstPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ComplianceRow> getCompliance()
	{
		if (compliance == null)
		{
			compliance = new EObjectContainmentEList<ComplianceRow>(ComplianceRow.class, this, ModelPackage.BALLOON__COMPLIANCE);
		}
		return compliance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.BALLOON__COMPLIANCE:
				return ((InternalEList<?>)getCompliance()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
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
			case ModelPackage.BALLOON__SECTION:
				return getSection();
			case ModelPackage.BALLOON__DIAMETER:
				return getDiameter();
			case ModelPackage.BALLOON__LENGTH:
				return getLength();
			case ModelPackage.BALLOON__NOMINAL_PRESSURE:
				return getNominalPressure();
			case ModelPackage.BALLOON__RATED_BURST_PRESSURE:
				return getRatedBurstPressure();
			case ModelPackage.BALLOON__COMPLIANCE:
				return getCompliance();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.BALLOON__SECTION:
				setSection((String)newValue);
				return;
			case ModelPackage.BALLOON__DIAMETER:
				setDiameter((Dimension)newValue);
				return;
			case ModelPackage.BALLOON__LENGTH:
				setLength((Dimension)newValue);
				return;
			case ModelPackage.BALLOON__NOMINAL_PRESSURE:
				setNominalPressure((Pressure)newValue);
				return;
			case ModelPackage.BALLOON__RATED_BURST_PRESSURE:
				setRatedBurstPressure((Pressure)newValue);
				return;
			case ModelPackage.BALLOON__COMPLIANCE:
				getCompliance().clear();
				getCompliance().addAll((Collection<? extends ComplianceRow>)newValue);
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
			case ModelPackage.BALLOON__SECTION:
				setSection(SECTION_EDEFAULT);
				return;
			case ModelPackage.BALLOON__DIAMETER:
				setDiameter(DIAMETER_EDEFAULT);
				return;
			case ModelPackage.BALLOON__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case ModelPackage.BALLOON__NOMINAL_PRESSURE:
				setNominalPressure(NOMINAL_PRESSURE_EDEFAULT);
				return;
			case ModelPackage.BALLOON__RATED_BURST_PRESSURE:
				setRatedBurstPressure(RATED_BURST_PRESSURE_EDEFAULT);
				return;
			case ModelPackage.BALLOON__COMPLIANCE:
				getCompliance().clear();
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
			case ModelPackage.BALLOON__SECTION:
				return SECTION_EDEFAULT == null ? section != null : !SECTION_EDEFAULT.equals(section);
			case ModelPackage.BALLOON__DIAMETER:
				return DIAMETER_EDEFAULT == null ? diameter != null : !DIAMETER_EDEFAULT.equals(diameter);
			case ModelPackage.BALLOON__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case ModelPackage.BALLOON__NOMINAL_PRESSURE:
				return NOMINAL_PRESSURE_EDEFAULT == null ? nominalPressure != null : !NOMINAL_PRESSURE_EDEFAULT.equals(nominalPressure);
			case ModelPackage.BALLOON__RATED_BURST_PRESSURE:
				return RATED_BURST_PRESSURE_EDEFAULT == null ? ratedBurstPressure != null : !RATED_BURST_PRESSURE_EDEFAULT.equals(ratedBurstPressure);
			case ModelPackage.BALLOON__COMPLIANCE:
				return compliance != null && !compliance.isEmpty();
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
		result.append(", nominalPressure: ");
		result.append(nominalPressure);
		result.append(", ratedBurstPressure: ");
		result.append(ratedBurstPressure);
		result.append(')');
		return result.toString();
	}

} //BalloonImpl
